import { facts, kind, quantity, size, slot, text, words, yesNo } from '../define.js';
import { materialsFor } from '../materials.js';

export default kind({
    name: 'tube',
    called: ['hose', 'pipe', 'tubing', 'line'],
    doc: 'Hose or pipe that has a line of its own.',
    group: 'low side',
    on: ['hydrogen', 'oxygen', 'lye', 'water'],
    properties: {
        bore: quantity('length', 'Inner width. Narrow ones take pressure, and in equal tubes the oxygen side loses a little more.', { assume: ['8 mm', 'a usual hose'], usual: '0.5 mm..100 mm' }),
        size: size(2, 'Outside x wall, for tube sold that way: 6x1 mm.', { example: '${1:6x1 mm}' }),
        length: quantity('length', 'Its length. Longer takes more pressure, and lets more hydrogen through the wall.', { unit: 'm', assume: ['1 m', 'nothing said'], usual: '10 mm..200 m' }),
        material: words(materialsFor('tube'), 'What it is made of. It decides the lye and warmth that it bears, and how much hydrogen goes through its wall.', { open: true, example: '${1:PVC}' }),
        rating: facts([[slot('', 'pressure'), 'at?', slot('at', 'temperature', true)]], 'Pressure that it bears, and at which temperature.', { fact: true, example: '${1:10 bar} at ${2:20 °C}' }),
        slope: facts([[slot('', 'slope')], [slot('low', { words: ['low-point', 'no-low-point'] })]], 'How it falls, and whether water can stand in it.', { example: '${1:4 %}' }),
        secured: yesNo('Clipped or clamped at both ends. A hose that slips off empties the rig into the room.', { neverAssumed: true }),
        label: text('What is written on it, or its colour. Hoses of the two gases look alike and get swapped.', {}),
    },
    events: ['comes off', 'blocked', 'leaks', 'kinked'],
    template: ['bore: ${1:8 mm}', 'length: ${2:2 m}', 'material: ${3:PVC}', 'secured: ${4|yes,no|}'],
});
