import { kind, quantity, words } from '../define.js';

export default kind({
    name: 'link',
    doc: 'Narrow lye pipe between the two columns that keeps their levels together. Deep enough that no gas goes through it.',
    group: 'cells',
    on: ['lye'],
    properties: {
        bore: quantity('length', 'Its bore. A wide one mixes the two lyes and their dissolved gases.', { assume: ['6 mm', 'a usual size'], usual: '2 mm..60 mm' }),
        depth: quantity('length', 'How deep its mouth lies under the working level. When a level falls to it, gas goes through to the other column.', { usual: '5 mm..2 m', example: '${1:200 mm}' }),
        shared: words(['none', 'returns', 'pumped-loop'], 'Whether the two lyes meet elsewhere as well. Shared lye carries dissolved gas from one side to the other.', { assume: ['none', 'nothing said'] }),
    },
    events: ['blocked'],
    template: ['bore: ${1:5 mm}', 'depth: ${2:200 mm}'],
});
