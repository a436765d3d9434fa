import { kind, quantity, words } from '../define.js';
import { liquidVessel } from '../liquid-vessel.js';

export default kind({
    name: 'scrubber',
    doc: 'Wash bottle that takes lye mist out of the gas before anything that lye would ruin.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        water: quantity('volume', 'Water in it. It slowly turns to weak lye.', { usual: '5 mL..20 L', example: '${1:1 L}' }),
        immersion: quantity('length', 'Depth of the dip tube under the water. It adds to the head of its side.', { assume: ['60 mm', 'usual for a wash bottle'], usual: '5 mm..1 m' }),
        enters: words(['dip-tube', 'top'], 'Where the gas comes in. By the top it pushes the water out.', { assume: ['dip-tube', 'as it is meant'] }),
        demister: words(['none', 'fibre', 'pad'], 'What catches the droplets that it makes itself.', { assume: ['none', 'nothing said'] }),
        ...liquidVessel,
        lid: words(['fixed', 'blow-off'], 'Whether its lid gives way before its wall does.', { assume: ['fixed', 'nothing said'] }),
    },
    events: ['dry', 'frozen', 'blocked'],
    template: ['water: ${1:1 L}', 'immersion: ${2:60 mm}', 'demister: ${3|fibre,pad,none|}'],
});
