import { facts, kind, quantity, size, slot, text, words } from '../define.js';

export default kind({
    name: 'separator',
    called: ['membrane', 'diaphragm'],
    doc: 'The sheet between the two halves of every cell. Wet, its pores hold the gases apart as long as the difference of heads stays small.',
    group: 'cells',
    single: true,
    properties: {
        material: words(['composite', 'PP-woven', 'PP-felt', 'PPS', 'PET', 'nylon', 'glass', 'cotton', 'paper', 'PTFE', 'steel-cloth', 'asbestos', 'other'],
            'What it is made of. Polyester, cotton and paper dissolve in warm lye.', { assume: ['composite', 'a guess for the voltage only; say yours'], open: true }),
        thickness: quantity('length', 'Thickness when wet and clamped. It adds to the way of the current through the lye.', { assume: ['0.5 mm', 'usual for composite sheet', '± 0.1 mm'], usual: '0.02 mm..6 mm' }),
        'largest-pore': quantity('length', 'Its largest pore, not the mean one: that is where gas breaks through.', { unit: 'µm', neverAssumed: true, fact: true, usual: '0.01 µm..2000 µm', example: '${1:20 µm}' }),
        'bubble-pressure': quantity('pressure', 'Difference of pressure at which gas came through it wet, measured or from its maker.', { unit: 'kPa', neverAssumed: true, fact: true, usual: '0.1 kPa..1000 kPa', example: '${1:150 kPa}' }),
        'area-resistance': quantity('area-resistance', 'Resistance times area in strong lye at 25 °C. It costs volts in proportion to the current.', { fact: true, usual: '0.02 ohm·cm2..20 ohm·cm2', example: '${1:0.3 ohm·cm2}' }),
        size: size(2, 'Size of the sheet. It must overlap the window on all sides.', { example: '${1:110 x 130 mm}' }),
        clamped: facts([[slot('', 'length')], [slot('bonded', { words: ['bonded'] })]], 'Width of its clamped edge all round, or bonded.', { example: '${1:8 mm}' }),
        'wetted-by': text('The step in which it is wetted before gas is made. Dry cloth lets gas straight through.', { example: '${1:wet separator}' }),
        permeability: quantity('permeability', 'Lye that passes it, for its area and the difference of pressure. It decides how fast levels even out.', { fact: true }),
    },
    events: ['torn', 'dry'],
    template: ['material: ${1|composite,PP-woven,PP-felt,PPS|}', 'thickness: ${2:0.5 mm}', 'bubble-pressure: ${3:150 kPa}', 'clamped: ${4:8 mm}'],
});
