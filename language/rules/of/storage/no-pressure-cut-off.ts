import { defineRule } from '../../define.js';

export default defineRule({
    name: 'no-pressure-cut-off',
    family: 'storage',
    severity: 'error',
    summary: 'Nothing stops the compressor when the cylinder is full.',
    why: 'It presses on until something bursts, blows or burns out.',
    source: 'IEC 60204-1 and ISO 12100 ask for a limit on every dangerous movement; here common practice, no source',
    guardsLife: true,
    from: 'drawn',
    on: 'cylinder',
    check(v, tell) {
        const compressor = v.the('compressor');
        if (!compressor || !v.paths.before(v.name, 'hydrogen').includes(compressor.name)) return;
        const watching = v.controls.sensing(`${v.name}.pressure`).filter(s => v.controls.stoppers(compressor.name).has(s.name));
        if (watching.length) return;
        tell({ at: v.at(), message: `Nothing that senses the pressure of ${v.name} stops ${compressor.name}.`, related: [{ span: compressor.at(), message: 'runs on' }] });
    },
});
