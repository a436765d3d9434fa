import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'gasometer-head',
    family: 'buffer',
    severity: 'error',
    summary: 'The counterweight of the bell leaves no pressure under it.',
    why: 'A bell that is pulled up sucks: air comes in at every joint, and lye is drawn over from the columns.',
    source: 'statics; 0.05 kPa for the friction of pulley and guides: common practice, no source',
    guardsLife: true,
    on: 'gasometer',
    check(v, tell) {
        const head = v.maybeQ('head');
        if (!v.paths.mediaOf(v.name).has('hydrogen')) return;
        const weights = v.said('counterweight');
        if (weights && v.maybe('counterweight') > 0) for (const key of ['bell-mass', 'diameter']) if (notGiven(v, key)) tell.cannotCheck(v, key, `whether ${v.name} sucks air in`);
        if (!tell.fallsShort(head, 50, 'kPa', v, weights ? 'counterweight' : 'bell-mass')) return;
        tell({
            at: v.at(weights ? 'counterweight' : 'bell-mass'), severity: head <= 0 ? 'error' : 'warning',
            message: head <= 0 ? `${show(v.num('counterweight'), 'kg')} pull up a bell of ${show(v.num('bell-mass'), 'kg')}: ${v.name} stands at ${show(head, 'kPa', 2)} and sucks air in.` : `Only ${show(head, 'kPa', 1)} stand under ${v.name}; below 0.05 kPa the friction of its guides can make it suck air in.`,
            related: weights ? [{ span: v.at('bell-mass'), message: 'the bell' }] : [],
        });
    },
});
