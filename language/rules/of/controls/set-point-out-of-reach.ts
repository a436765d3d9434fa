import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'set-point-out-of-reach',
    family: 'controls',
    severity: 'error',
    summary: 'The switch cannot be set to that point.',
    why: 'It acts somewhere else, or never.',
    source: 'as printed on it',
    on: ['switch', 'trip'],
    check(v, tell) {
        const range = v.bounds('range');
        for (const key of ['makes', 'breaks', 'trips']) {
            const n = v.maybe(`${key}.value`);
            if (n === n && range.high > range.low && (n < range.low || n > range.high)) tell({ at: v.at(key), message: `${v.name} can be set ${v.given('range').entry ? 'within its range' : ''} only; this point lies outside.`.replace('  ', ' '), related: [{ span: v.at('range'), message: 'its range' }] });
            const [part, quantity] = (v.controls.sensed(v) ?? '').split('.');
            if (quantity === 'volume') {
                const volume = v.other(part)?.maybe('volume') ?? NaN;
                if (n > volume) tell({ at: v.at(key), message: `${v.name} acts at ${show(n, 'L')}, but ${part} holds ${show(volume, 'L')}: it never gets there.` });
            }
        }
    },
});
