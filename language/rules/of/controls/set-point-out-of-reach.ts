import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';
import type { Severity } from '../../define.js';

const pointOf = (key: string) => ({ key, valueOf: `${key}.value`, sideOf: `${key}.side` });
const ofSwitch = [pointOf('breaks'), pointOf('makes')];
const ofTrip = [pointOf('trips'), pointOf('alarm')];

export default defineRule({
    name: 'set-point-out-of-reach',
    family: 'controls',
    severity: 'error',
    summary: 'A switch or trip is set where what it senses never comes, or outside its own scale.',
    why: 'A guard that cannot act is no guard, and on a drawing it looks like one.',
    source: 'geometry and the plate of the device',
    guardsLife: true,
    under: ['cut-off-above-rating'],
    on: ['switch', 'trip', 'analyser', 'detector'],
    check(v, tell) {
        const [name, quantity] = (v.controls.sensed(v) ?? '').split('.');
        const part = v.other(name);
        if (!part || !quantity) return;
        const said = v.says('range');
        const range = said === 'stated' || said === 'like' ? v.bounds('range') : { low: NaN, high: NaN };
        for (const { key, valueOf, sideOf } of v.kind === 'switch' ? ofSwitch : ofTrip) {
            const value = v.maybe(valueOf);
            if (value !== value) continue; // speed only
            const above = v.word(sideOf) === 'above';
            const unit = quantity === 'volume' ? 'L' : quantity === 'level' ? 'mm' : quantity === 'temperature' ? '°C' : part.kind === 'cylinder' ? 'bar' : 'kPa';
            const acts = key === 'trips' ? 'trips' : key === 'alarm' ? 'warns' : key;
            const never = (limit: number, what: string, best?: number, severity: Severity = 'error') => tell({
                at: v.at(key), severity, message: `${v.name} ${acts} at ${show(value, unit)}; ${what} ${show(limit, unit)}: it never acts.`, related: [{ span: part.at(), message: `what it senses` }],
                fixes: defined(best === undefined ? undefined : setValue(v, key, `above ${show(best, unit)}`, `Set it to ${show(best, unit)}`)),
            });
            if (value < range.low || value > range.high) tell({ at: v.at(key), message: `${v.name} is set to ${show(value, unit)}, outside its own span of ${show(range.low, unit)} to ${show(range.high, unit)}.`, related: [{ span: v.at('range'), message: 'its span' }] });
            else if (above && quantity === 'volume' && value >= part.maybe('volume')) never(part.num('volume'), `${name} holds`, Math.floor(0.9 * part.num('volume') * 1000) / 1000);
            else if (above && quantity === 'level' && value >= part.maybe('height')) never(part.num('height'), `${name} is only as high as`);
            else if (above && quantity === 'temperature' && part.kind === 'stack' && value >= (v.the('lye')?.maybeQ('boiling-point') ?? NaN)) never(v.the('lye')!.q('boiling-point'), 'its lye boils at');
            else if (above && v.kind === 'trip' && quantity === 'pressure' && part.kind === 'cylinder') {
                const relief = v.all('relief-valve').find(r => v.paths.route(part.name, r.name, 'hydrogen') && !v.paths.between(part.name, r.name, 'hydrogen').some(n => v.other(n)?.kind === 'regulator'));
                if (relief && value >= relief.maybe('set')) never(relief.num('set'), `${relief.name} opens at`, undefined, 'warning');
            } else if (!above && quantity === 'level' && part.kind === 'column' && value >= part.maybe('level') && part.said('level')) {
                tell({ at: v.at(key), message: `${v.name} ${acts} below ${show(value, 'mm')}, but ${name} works at ${show(part.num('level'), 'mm')}: it acts all the time.`, related: [{ span: part.at('level'), message: 'the working level' }] });
            }
        }
    },
});
