import { facts, kind, parts, quantity, slot } from '../define.js';

export default kind({
    name: 'check-valve',
    called: ['non-return-valve', 'one-way-valve'],
    doc: 'Lets gas pass one way only: in the direction of its path.',
    group: 'low side',
    on: ['hydrogen', 'oxygen', 'lye', 'water'],
    properties: {
        'cracks-at': quantity('pressure', 'Difference of pressure at which it opens. It adds to the head.', { unit: 'kPa', usual: '0.01 kPa..100 kPa', example: '${1:2 kPa}' }),
        direction: parts([], 'From which part to which it lets gas pass, as its arrow shows; only if that is not the direction of its path.', { example: '${1:compressor} to ${2:cylinder}' }),
        rating: facts([[slot('', 'pressure'), 'at?', slot('at', 'temperature', true)]], 'Pressure that it bears, and at which temperature, by its maker.', { fact: true, example: '${1:25 bar}' }),
        drop: facts([[slot('drop', 'pressure'), 'at', slot('at', 'gas-flow')]], 'Pressure lost in it at a flow, by its maker or measured.', { example: '${1:1 kPa} at ${2:100 L/h}' }),
    },
    events: ['leaks back', 'sticks shut', 'sticks open'],
    template: ['cracks-at: ${1:2 kPa}', 'rating: ${2:25 bar}'],
});
