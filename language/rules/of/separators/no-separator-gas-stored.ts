import { defineRule } from '../../define.js';

export default defineRule({
    name: 'no-separator-gas-stored',
    family: 'separators and purity',
    severity: 'error',
    summary: 'Cells without separators make one mixed gas, and the rig keeps it.',
    why: 'It is hydrogen and oxygen in the very proportion that detonates; a spark too weak to feel lights it.',
    source: 'least ignition energy 0.017 to 0.02 mJ in air, combustion tables; about ten times lower in oxygen, from memory; keeping it at all: common practice, no source',
    guardsLife: true,
    on: 'stack',
    check(v, tell) {
        if (v.says('separator') !== 'none') return;
        const stores = ['bag', 'gasometer', 'compressor', 'cylinder', 'balloon'].flatMap(k => v.all(k)).filter(s => v.paths.mediaOf(s.name).size);
        if (!stores.length) {
            tell({ at: v.at('separator'), severity: 'warning', message: 'Without separators both gases come out mixed, two to one, and every gas space of the rig can detonate: less than a litre in all, never collected, never compressed.' });
            return;
        }
        tell({
            at: v.at('separator'), message: `Without separators both gases come out mixed, two to one; ${stores.map(s => s.name).slice(0, 3).join(', ')} would hold a charge that detonates. It must never be collected or compressed.`,
            related: stores.slice(0, 3).map(s => ({ span: s.at(), message: 'keeps the gas' })),
        });
    },
});
