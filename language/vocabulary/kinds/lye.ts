import { facts, kind, quantity, slot, text, words } from '../define.js';
import { solutes } from '../solutes.js';
import { waters } from '../waters.js';

export default kind({
    name: 'lye',
    called: ['electrolyte', 'koh', 'solution'],
    doc: 'What fills cells and columns. It burns skin and blinds eyes within seconds: goggles, gloves and running water before it is touched.',
    group: 'cells',
    single: true,
    properties: {
        solute: words([...solutes.keys()], 'What is dissolved in the water. Common salt makes poisonous chlorine instead of oxygen.', { assume: ['KOH', 'what most rigs use'], open: true, called: { 'potassium-hydroxide': 'KOH', 'caustic-potash': 'KOH', 'sodium-hydroxide': 'NaOH', 'caustic-soda': 'NaOH' } }),
        strength: quantity('mass-fraction', 'Share of the mass: 25 wt%; or 6 mol/L, 8 mol/kg.', { assume: ['28 wt%', 'near the best conducting strength of potash', '± 2 wt%'], usual: '1 wt%..45 wt%', unit: 'wt%', positive: true }),
        fill: quantity('volume', 'Volume of lye in the whole rig: cells, pipes and columns up to the working level.', { usual: '0.05 L..200 L', example: '${1:6 L}' }),
        'solute-mass': quantity('mass', 'Mass of the solid weighed out. With that of the water it checks the strength, and tells how hot mixing gets.', { usual: '1 g..200 kg', example: '${1:1.5 kg}' }),
        'water-mass': quantity('mass', 'Mass of the water weighed out. The solid is added to the water in small portions, never the other way round.', { usual: '10 g..500 kg', example: '${1:4 kg}' }),
        assay: quantity('fraction', 'Share of the solid that is hydroxide. Potash pellets hold 10 to 15 % water.', { assume: ['88 %', 'usual for potash pellets; caustic soda about 97 %', '± 3 %'], usual: '50 %..100 %' }),
        carbonate: quantity('fraction', 'Share of the hydroxide that the air has turned into carbonate. It conducts less and foams.', { assume: ['0 %', 'fresh lye'], usual: '0 %..60 %' }),
        water: words([...waters.keys()], 'Water that it is made and topped up with. What the water holds stays in the lye when the water is used up.', { assume: ['distilled', 'what every guide asks for'] }),
        'water-conductivity': quantity('conductivity', 'Conductivity of that water, as a measure of all salts in it.', { usual: '0.01 µS/cm..60 mS/cm', example: '${1:2 µS/cm}' }),
        chloride: quantity('density', 'Chloride in that water. It gathers with every top-up and pits stainless steel.', { unit: 'mg/L', usual: '0.01 mg/L..20000 mg/L', example: '${1:10 mg/L}' }),
        additives: text('Anything else in it. Soap, alcohol and the like make it foam.', {}),
        changed: facts([[slot('', 'date')]], 'Day on which it was last changed. Old lye has taken up carbonate from the air.', { fact: true, example: '${1:2026-03-14}' }),
    },
    template: ['solute: ${1|KOH,NaOH|}', 'strength: ${2:28 wt%}', 'fill: ${3:6 L}'],
});
