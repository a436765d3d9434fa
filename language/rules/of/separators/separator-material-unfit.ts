import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';

export default defineRule({
    name: 'separator-material-unfit',
    family: 'separators and purity',
    severity: 'error',
    summary: 'The separator is of a material that does not last in lye.',
    why: 'Polyester, cotton and paper dissolve in warm lye within weeks, and then the gases meet. Asbestos is carcinogenic and banned.',
    source: 'polymer handbooks, from memory',
    on: 'separator',
    check(v, tell) {
        const m = v.word('material') ?? '';
        const never = ['PET', 'polyester', 'cotton', 'paper', 'PC', 'PLA', 'asbestos'];
        if (never.includes(m)) tell({ at: v.at('material'), message: m === 'asbestos' ? 'Asbestos causes cancer and is banned.' : `${m} dissolves in warm lye: holes within weeks, and the gases meet.`, fixes: defined(setValue(v, 'material', 'composite', 'Plan a composite sheet')) });
        else if (m === 'nylon' || m === 'glass') tell({ at: v.at('material'), severity: 'warning', message: `${m} lasts in lye only cool and for a short time.` });
    },
});
