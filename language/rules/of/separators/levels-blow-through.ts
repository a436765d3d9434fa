import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'levels-blow-through',
    family: 'separators and purity',
    severity: 'error',
    summary: 'The difference of heads pushes one level down to the link or to the return port: gas goes where it must not.',
    why: 'Through the link hydrogen and oxygen meet in one vessel; through the return port gas goes back into the cells.',
    source: 'hydrostatics',
    guardsLife: true,
    on: 'column',
    check(v, tell) {
        const down = v.maybeQ('level-down', 0);
        const link = v.the('link');
        if (!link) return;
        const depth = link.maybe('depth');
        if (depth !== depth) {
            if (v.all('column')[0]?.name === v.name && v.all('column').length > 1) tell.cannotCheck(link, 'depth', 'that no gas goes through the link');
            return;
        }
        const deeper = Math.ceil(down * 2000 / 10) * 10;
        if (tell.exceeds(down, depth, 'mm', link, 'depth')) {
            tell({ at: link.at('depth'), message: `The heads push the level of ${v.name} down by ${show(down, 'mm')}; the link lies only ${show(depth, 'mm')} deep: gas passes into the other column.`, related: [{ span: v.at(), message: 'pushed down here' }], fixes: defined(setValue(link, 'depth', `${deeper} mm`)) });
        } else if (v.said('return-port') && tell.exceeds(down, v.num('return-port'), 'mm', v, 'return-port')) {
            tell({ at: v.at('return-port'), message: `The heads push the level of ${v.name} down by ${show(down, 'mm')}; its return port lies only ${show(v.num('return-port'), 'mm')} deep: gas goes back to the cells.`, fixes: defined(setValue(v, 'return-port', `${deeper} mm`)) });
        }
    },
});
