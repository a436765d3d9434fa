import { addToList } from '../../path-fixes.js';
import { defineRule } from '../../define.js';
import { defined } from '../../fixes.js';

export default defineRule({
    name: 'metal-not-bonded',
    family: 'wiring',
    severity: 'warning',
    summary: 'Metal that carries hydrogen hangs on hoses and has no wire to earth.',
    why: 'Flowing gas, rubbing hands and dry air charge it. It keeps the charge, until a finger or an earthed thing comes near: the spark is hardly felt and lights hydrogen.',
    source: 'under 1 MΩ to earth: IEC TS 60079-32-1, from memory',
    on: 'rig',
    check(v, tell) {
        const says = v.says('bonded');
        if (says === 'silent' || says === 'unknown') {
            if (!tell.reached('built')) return;
        }
        const line = v.paths.on('hydrogen');
        const metal = [...v.all('compressor'), ...v.all('cylinder')].filter(p => line.includes(p.name));
        const named = v.rows('bonded').map(r => r.get('')?.text ?? '');
        if (named.some(n => /^(all|everything)\b/i.test(n))) return;
        const bare = metal.filter(p => !named.some(n => n.includes(p.name) || n.includes(p.kind) || (p.kind === 'cylinder' && /\b(tank|bottle|vessel|store)\b/.test(n))));
        if (!bare.length) return;
        const names = bare.map(p => p.name).join(' and ');
        tell({
            at: v.part.entries.has('bonded') ? v.at('bonded') : bare[0].at(), severity: says === 'none' ? 'warning' : 'hint',
            message: says === 'none' ? `${names} ${bare.length > 1 ? 'are' : 'is'} not joined to earth and can charge.` : `Nothing says that ${names} ${bare.length > 1 ? 'are' : 'is'} joined to earth; on hoses metal charges.`,
            related: bare.map(p => ({ span: p.at(), message: 'metal that carries hydrogen' })),
            fixes: defined(!v.part.implied && says === 'none' ? addToList(v, 'bonded', bare.map(p => p.name).join(', '), 'Plan a wire to earth') : undefined),
        });
    },
});
