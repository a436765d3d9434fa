import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'levels-blow-through',
    family: 'separators and purity',
    severity: 'error',
    summary: 'The difference of heads pushes one level down to the link: gas would pass into the other column.',
    why: 'Then hydrogen and oxygen meet in one vessel.',
    source: 'hydrostatics',
    guardsLife: true,
    on: 'link',
    check(v, tell) {
        const columns = v.all('column');
        const down = Math.max(...columns.map(c => Math.abs(c.maybeQ('level-down', 0))));
        const depth = v.num('depth');
        if (depth !== depth) {
            if (columns.length > 1) tell.cannotCheck(v, 'depth', 'that no gas goes through the link');
            return;
        }
        if (!(down >= depth)) return;
        tell({ at: v.at('depth'), message: `The heads push one level down by ${show(down, 'mm')}; the link lies only ${show(depth, 'mm')} deep: gas would pass into the other column.`, fixes: defined(setValue(v, 'depth', `${Math.ceil(down * 2000 / 10) * 10} mm`)) });
    },
});
