import { defineRule } from '../../define.js';

export default defineRule({
    name: 'burner-for-other-gas',
    family: 'use',
    severity: 'error',
    summary: 'The burner was made for another gas.',
    why: 'One that mixes air in lets hydrogen burn back into it: its flame is six to eight times as fast.',
    source: 'laminar burning velocities: hydrogen about 3 m/s, methane and propane about 0.4 m/s, ISO/TR 15916 and combustion tables',
    guardsLife: true,
    on: 'burner',
    check(v, tell) {
        const sort = v.word('sort');
        if (sort === 'natural-gas' || sort === 'LPG') tell({ at: v.at('sort'), message: `A burner for ${sort === 'LPG' ? 'liquefied gas' : 'natural gas'} takes air in before the flame; hydrogen burns back into it.` });
        else if (sort === 'premix' || sort === 'torch-common-duct') tell({ at: v.at('sort'), severity: 'warning', message: 'It mixes before the tip: hydrogen burns back through anything wider than 0.3 mm unless the speed at the tip stays high.' });
    },
});
