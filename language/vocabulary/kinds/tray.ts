import { kind, quantity, yesNo } from '../define.js';

export default kind({
    name: 'tray',
    doc: 'Tray under everything that holds lye.',
    group: 'cells',
    properties: {
        volume: quantity('volume', 'What it holds: it should take more than the largest vessel above it.', { usual: '0.1 L..500 L', example: '${1:8 L}' }),
        drained: yesNo('It has a drain, so that a drip does not stand under the plates.', { assume: ['no', 'nothing said'] }),
    },
    template: ['volume: ${1:8 L}'],
});
