import { facts, kind, quantity, slot, words, yesNo } from '../define.js';
import { materialsFor } from '../materials.js';

export default kind({
    name: 'cooler',
    called: ['heat-exchanger', 'radiator'],
    doc: 'Takes heat out of the lye, by water, air or fins.',
    group: 'low side',
    on: ['lye', 'water', 'hydrogen', 'oxygen'],
    ports: 'many',
    properties: {
        sort: words(['tube-in-tube', 'coil-in-column', 'fan', 'fins', 'none'], 'How it is built, and so what carries the heat away.', { assume: ['tube-in-tube', 'usual with water'] }),
        length: quantity('length', 'Length of the tube through which heat passes. With the bore it makes the cooling area.', { unit: 'm', usual: '0.05 m..100 m', example: '${1:2 m}' }),
        bore: quantity('length', 'Bore of that tube. With the length it makes the cooling area.', { assume: ['8 mm', 'a usual tube'], usual: '2 mm..60 mm' }),
        coefficient: quantity('heat-transfer', 'Heat passed for each area and each kelvin between lye and water. It is low where either flows slowly.', { assume: ['120 W/(m2·K)', 'slow flow on both sides', '± 40 %'], usual: '5 W/(m2·K)..2000 W/(m2·K)' }),
        water: facts([[slot('temperature', 'temperature')], [slot('flow', 'flow')], [slot('pressure', 'pressure')]], 'Temperature, flow and pressure of its water. Water of higher pressure leaks into the lye, not the other way.', { assume: ['15 °C, 1 L/min, 3 bar', 'a tap in a temperate place'], example: '${1:15 °C}, ${2:1 L/min}, ${3:2 bar}' }),
        'lye-out': quantity('temperature', 'Temperature at which the lye is said to leave it. It cannot be colder than the water that enters.', { usual: '0 °C..100 °C' }),
        material: words(materialsFor('tube'), 'What stands between lye and water. Metal there can carry current out of a live stack.', { assume: ['PP', 'nothing said'], open: true }),
        earthed: yesNo('Metal in it is joined to earth, by its water pipe too. In the lye of a live stack that lets current run away.', { assume: ['no', 'nothing said'] }),
        position: words(['return', 'riser'], 'Where it sits in the lye circuit. On the riser it takes the lift away.', { assume: ['return', 'the usual place'] }),
        'middle-height': quantity('length', 'Height of the middle of its tubes above the floor. Where that is above the middle of the cells, warmth alone sends lye through it after a stop; beside them or below it stands still.', { positive: false, unit: 'm', usual: '-2 m..4 m', example: '${1:1 m}' }),
        'water-side': words(['mains', 'closed-loop'], 'Where its water comes from: the mains, or a loop of its own.', { assume: ['mains', 'nothing said'] }),
    },
    events: ['water fails', 'leaks', 'furs up'],
    template: ['sort: ${1|tube-in-tube,coil-in-column|}', 'length: ${2:2 m}', 'bore: ${3:8 mm}', 'water: ${4:15 °C}, ${5:1 L/min}, ${6:2 bar}'],
});
