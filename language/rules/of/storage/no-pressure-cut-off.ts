import { defineRule } from '../../define.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'no-pressure-cut-off',
    family: 'storage',
    severity: 'error',
    summary: 'Nothing stops the compressor when the cylinder is full.',
    why: 'It presses on until the relief valve lifts, or something else gives way.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const compressor = v.all('compressor').find(c => v.paths.route(c.name, v.name, 'hydrogen'));
        if (!compressor) return;
        const own = v.controls.involved(compressor.name);
        const places = [v.name, ...v.paths.between(compressor.name, v.name, 'hydrogen'), compressor.name];
        if (places.some(n => v.controls.sensing(`${n}.pressure`).some(s => own.has(s.name))) || v.controls.sensing(`${compressor.name}.discharge-pressure`).some(s => own.has(s.name))) return;
        tell({ at: v.at(), severity: missing(tell, 'error'), message: `Nothing that senses the pressure of ${v.name} stops ${compressor.name}.`, related: [{ span: compressor.at(), message: 'runs on' }] });
    },
});
