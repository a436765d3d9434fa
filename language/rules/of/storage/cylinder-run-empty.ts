import { defined, setValue } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'cylinder-run-empty',
    family: 'storage',
    severity: 'hint',
    summary: 'The cylinder is used until nothing is left in it.',
    why: 'In a cold night a cylinder with no pressure in it breathes in, and what was pure gas has to be purged again.',
    source: 'ideal gas law; 0.5 bar: common practice, no source',
    on: 'cylinder',
    check(v, tell) {
        const left = v.maybe('end-pressure');
        if (!v.said('end-pressure') || !(left < 50000) || !v.paths.mediaOf(v.name).has('hydrogen')) return;
        const cold = v.maybeQ('pressure-empty-cold');
        const site = v.the('site');
        const breathes = cold <= 0;
        tell({
            at: v.at('end-pressure'), severity: breathes ? 'warning' : 'hint',
            message: `${v.name} is used down to ${show(left, 'bar')}${breathes ? `: at ${show(site!.num('coldest'), '°C')} it stands ${show(-cold, 'bar', 2)} below the air outside and breathes in` : ''}; 0.5 bar should stay in it.`,
            related: breathes && site!.said('coldest') ? [{ span: site!.at('coldest'), message: 'the coldest' }] : [], fixes: defined(setValue(v, 'end-pressure', '0.5 bar', 'Leave 0.5 bar in it')),
        });
    },
});
