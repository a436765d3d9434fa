import { extracts } from '../../../quantities/surroundings.js';
import { defineRule } from '../../define.js';
import { isIndoors } from '../../place.js';

export default defineRule({
    name: 'fan-without-inlet',
    family: 'siting',
    severity: 'warning',
    summary: 'A fan draws from a room that lets no fresh air in.',
    why: 'A fan moves only as much out as comes in. From a tight room it moves next to nothing, and every number that counts on its flow is wrong.',
    source: 'conservation of air; common practice, no source',
    on: 'fan',
    check(v, tell) {
        if (isIndoors(v) !== true || !v.the('stack') || !extracts(v)) return;
        const site = v.the('site')!;
        if (site.says('openings') !== 'none') return;
        tell({ at: site.at('openings'), message: `No opening lets air in, so ${v.name} moves little: an inlet low down belongs to it.`, related: [{ span: v.at(), message: 'draws from the room' }] });
    },
});
