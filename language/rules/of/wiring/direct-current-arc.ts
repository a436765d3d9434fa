import { directVolts } from '../../direct-current.js';
import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';
import { notGiven } from '../../stage.js';

/** V and A above which an arc between opening contacts holds itself. Common practice, no source. */
const ARC_VOLTS = 30;
const ARC_AMPERES = 2;

export default defineRule({
    name: 'direct-current-arc',
    family: 'wiring',
    severity: 'warning',
    summary: 'A switch or fuse in the way of direct current is not made to break it.',
    why: 'Alternating current is zero a hundred times a second, and there its arc goes out. Direct current keeps the arc alight in the opened switch or the blown fuse, until something burns.',
    source: 'nameplate; from 30 V and 2 A on: common practice, no source',
    guardsLife: true,
    on: ['isolator', 'fuse'],
    check(v, tell) {
        const source = directVolts(v);
        if (!source) return;
        const volts = show(source.volts, 'V');
        const related = [{ span: source.view.at(source.key), message: 'where the voltage comes from' }];
        if (v.kind === 'fuse') {
            const breaks = v.maybe('dc-rating');
            if (v.says('dc-rating') === 'none' && source.volts > ARC_VOLTS) tell({ at: v.at('dc-rating'), message: `${v.name} has no rating for direct voltage, and ${volts} can stand across it: when it blows, the arc may go on.`, related });
            else if (tell.fallsShort(breaks, 0.999 * source.volts, 'V', v, 'dc-rating')) tell({ at: v.at('dc-rating'), severity: 'error', message: `${v.name} breaks ${show(breaks, 'V')} of direct voltage; ${volts} can stand across it.`, related });
            else if (notGiven(v, 'dc-rating') && source.volts > ARC_VOLTS) tell.cannotCheck(v, 'dc-rating', `whether ${v.name} breaks the ${volts} that can stand across it`);
            return;
        }
        // Behind a converter the stack's current is another one.
        const converted = v.paths.after(v.name, 'current').some(n => ['supply', 'charger'].includes(v.other(n)?.kind ?? ''));
        const amperes = converted ? NaN : v.the('stack')?.maybeQ('current') ?? NaN;
        const rated = v.maybe('rating.voltage');
        if (notGiven(v, 'rating') && source.volts > ARC_VOLTS && !(amperes <= ARC_AMPERES)) tell.cannotCheck(v, 'rating', `whether ${v.name} breaks ${volts} of direct voltage`);
        if (v.word('rating.sort') === 'AC') {
            if (source.volts > ARC_VOLTS && !(amperes <= ARC_AMPERES)) tell({ at: v.at('rating'), message: `${v.name} is made for alternating current and has to break ${amperes === amperes ? `${show(amperes, 'A')} at ` : ''}${volts} of direct current: the arc may not go out.`, related });
        } else if (tell.fallsShort(rated, 0.999 * source.volts, 'V', v, 'rating')) tell({ at: v.at('rating'), message: `${v.name} breaks ${show(rated, 'V')} of direct voltage; ${volts} can stand across it.`, related });
        else if (tell.fallsShort(v.maybe('rating'), amperes, 'A', v, 'rating')) tell({ at: v.at('rating'), message: `${v.name} is rated ${show(v.num('rating'), 'A')}; ${show(amperes, 'A')} pass it.` });
    },
});
