import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'relief-missing',
    family: 'storage',
    severity: 'error',
    summary: 'No relief valve guards the cylinder.',
    why: 'A switch welds shut, a hand forgets, the sun shines: without a relief valve the vessel itself is what gives way.',
    source: 'Directive 2014/68/EU Annex I 2.11; CGA S-1.3; both from memory',
    guardsLife: true,
    from: 'drawn',
    on: 'cylinder',
    check(v, tell) {
        const gas = v.paths;
        const reached = new Set([...gas.before(v.name, 'hydrogen'), ...gas.after(v.name, 'hydrogen')]);
        const valve = v.all('relief-valve').some(r => reached.has(r.name));
        const own = v.maybe('built-in-relief');
        if (valve || own <= v.maybe('rating')) return;
        tell({ at: v.at(), message: own === own ? `${v.name} has a relief of its own at ${show(own, 'bar')}, but that is no help above its rating; it needs a relief valve.` : `No relief valve is on the paths of ${v.name}.` });
    },
});
