import { facts, kind, quantity, slot, words } from '../define.js';
import { liquidVessel } from '../liquid-vessel.js';

export default kind({
    name: 'bubbler',
    called: ['wash-bottle', 'flashback-bottle'],
    doc: 'Vessel in which the gas always bubbles through liquid: it stops a flame from running back, and adds its depth to the head.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        immersion: quantity('length', 'Depth of the dip tube under the liquid. It adds to the head of its side, and must be deep enough to stop a flame.', { assume: ['100 mm', 'deep enough to break a flame into bubbles'], usual: '5 mm..1 m' }),
        minimum: quantity('length', 'Depth at which it must be refilled. Shallower than this it no longer stops a flame for certain.', { assume: ['50 mm', 'half of the usual depth'], usual: '5 mm..1 m' }),
        nozzle: facts([[slot('count', 'count'), 'of', slot('bore', 'length')]], 'Mouths of the dip tube. Too much gas through one mouth makes an open channel.', { assume: ['1 of 6 mm', 'a plain hose end'], example: '${1:2} of ${2:6 mm}' }),
        water: facts([[slot('', 'volume')], [slot('reserve', 'volume'), 'above?', 'minimum?']], 'Liquid in it at the normal level. It can be sucked back when the rig cools, and the gas carries it off slowly. A second volume tells how much of it stands above the minimum.', { usual: '5 mL..20 L', positive: true, example: '${1:0.8 L}' }),
        ...liquidVessel,
        lid: words(['fixed', 'blow-off'], 'Whether its lid gives way before its wall does.', { assume: ['fixed', 'nothing said'] }),
        enters: words(['dip-tube', 'top'], 'Where the gas comes in. By the top it pushes the liquid out.', { assume: ['dip-tube', 'as it is meant'] }),
    },
    events: ['dry', 'frozen', 'blocked', 'overfilled'],
    template: ['immersion: ${1:100 mm}', 'nozzle: ${2:1} of ${3:6 mm}', 'water: ${4:0.8 L}', 'lid: ${5|blow-off,fixed|}', 'level-shown: ${6|sight,switch,none|}'],
});
