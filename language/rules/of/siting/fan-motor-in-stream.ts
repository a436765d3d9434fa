import { extracts } from '../../../quantities/surroundings.js';
import { defineRule } from '../../define.js';
import { isIndoors, stores } from '../../place.js';

export default defineRule({
    name: 'fan-motor-in-stream',
    family: 'siting',
    severity: 'warning',
    summary: 'The fan that takes the gas out has an ordinary motor in its stream.',
    why: 'When there is a leak, all of it passes the motor: brushes, switches and a jammed rotor can light it, in the very duct that was to make it harmless.',
    source: 'equipment for explosive atmospheres: IEC 60079-0 and -10-1, from memory; motors out of the stream: common practice, no source',
    guardsLife: true,
    on: 'fan',
    check(v, tell) {
        if (isIndoors(v) !== true || !v.the('stack') || !extracts(v) || v.word('in-stream-motor') !== 'ordinary') return;
        // Assumed, not stated: then it is a question where something is kept or pressed.
        const said = v.said('in-stream-motor');
        if (!said && !stores(v).length) return;
        tell({
            at: v.at(said ? 'in-stream-motor' : undefined), severity: said && tell.reached('built') ? 'warning' : 'hint',
            message: said ? `The ordinary motor of ${v.name} stands in the air that carries a leak away: it can spark in it.` : `Is the motor of ${v.name} made for gas, or outside the stream? An ordinary one can spark in what it carries away.`,
        });
    },
});
