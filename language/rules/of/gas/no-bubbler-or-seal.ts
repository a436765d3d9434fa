import { defineRule } from '../../define.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'no-bubbler-or-seal',
    family: 'gas conditioning',
    severity: 'error',
    summary: 'Nothing stops a flame on its way back from the burner.',
    why: 'It runs back through hose and bag to the stack.',
    source: 'ISO 5175-1 asks for a flashback arrestor at the outlet point; from memory',
    guardsLife: true,
    from: 'drawn',
    on: 'burner',
    check(v, tell) {
        const before = v.paths.before(v.name, 'hydrogen');
        if (!before.length) return;
        const kept = before.map(n => v.other(n)).filter((p): p is View => !!p && (p.kind === 'arrestor' || p.kind === 'bubbler'));
        if (!kept.length) tell({ at: v.at(), message: `Neither an arrestor nor a bubbler stands before ${v.name}: a flame that runs back reaches the store.` });
    },
});
