import { defineRule } from '../../define.js';

export default defineRule({
    name: 'control-and-trip-share-sensor',
    family: 'controls',
    severity: 'warning',
    summary: 'The same switch runs the compressor and guards the cylinder.',
    why: 'When it sticks, control and guard are lost at once.',
    source: 'IEC 61511-1, 11.2.4 on keeping control and protection apart, from memory',
    guardsLife: true,
    from: 'drawn',
    on: 'cylinder',
    check(v, tell) {
        const compressor = v.the('compressor');
        if (!compressor || !v.paths.before(v.name, 'hydrogen').includes(compressor.name)) return;
        const guards = v.controls.sensing(`${v.name}.pressure`).filter(s => v.controls.stoppers(compressor.name).has(s.name));
        if (guards.length === 1) tell({ at: guards[0].at(), message: `${guards[0].name} alone stops ${compressor.name} at pressure: the control is also the only guard before the relief valve.`, related: [{ span: v.at(), message: 'what it guards' }] });
    },
});
