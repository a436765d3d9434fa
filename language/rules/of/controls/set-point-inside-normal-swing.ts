import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

/** What a number that a trip can sense is in ordinary running. */
const ordinary: Readonly<Record<string, undefined | { readonly of: string; readonly is: string; readonly unit: string; readonly says: string }>> = {
    temperature: { of: 'stack', is: 'steady-temperature', unit: '°C', says: 'its temperature after hours' },
    current: { of: 'stack', is: 'current', unit: 'A', says: 'its current' },
    voltage: { of: 'stack', is: 'voltage', unit: 'V', says: 'its voltage' },
    pressure: { of: 'column', is: 'head', unit: 'kPa', says: 'its head' },
};

export default defineRule({
    name: 'set-point-inside-normal-swing',
    family: 'controls',
    severity: 'warning',
    summary: 'A trip acts at what is ordinary.',
    why: 'A guard that stops the rig for nothing is bridged within a week, and then it is not there on the day that counts.',
    source: 'the point with its stated ±, against what is worked out; common practice, no source',
    under: ['stack-overheats', 'limits-too-close-or-crossed', 'supply-below-reversible', 'supply-below-useful-voltage'],
    on: 'trip',
    check(v, tell) {
        const [name, quantity] = (v.controls.sensed(v) ?? '').split('.');
        const usual = ordinary[quantity ?? ''];
        if (!usual || !v.controls.stops(v.name).length) return;
        const part = v.other(name);
        if (part?.kind !== usual.of) return;
        const normal = part.maybeQ(usual.is);
        const point = v.maybe('trips.value');
        const above = v.word('trips.side') === 'above';
        const { low, high } = v.bounds('trips.value');
        const always = above ? point <= normal : point >= normal;
        if (!always && !(above ? low <= normal : high >= normal)) return;
        tell({
            at: v.at('trips'), severity: always ? 'warning' : 'hint',
            message: `${v.name} acts at ${show(point, usual.unit)}${always ? '' : `, with its ± already at ${show(above ? low : high, usual.unit)}`}; in ordinary running ${name} is at ${show(normal, usual.unit)}: it stops the rig for nothing. Change what is ordinary, not the guard.`,
            related: [{ span: part.at(), message: usual.says }],
        });
    },
});
