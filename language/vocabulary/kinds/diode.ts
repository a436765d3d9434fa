import { kind, quantity } from '../define.js';

export default kind({
    name: 'diode',
    doc: 'Diode in series with the stack, so that the charged stack cannot push current back.',
    group: 'current',
    on: ['current'],
    properties: {
        rating: quantity('current', 'Current that it may carry for hours, on the sink that it sits on.', { fact: true, usual: '0.5 A..500 A', example: '${1:30 A}' }),
        'forward-drop': quantity('voltage', 'Voltage lost in it while current flows. The stack gets that much less, and the diode warms.', { assume: ['0.8 V', 'silicon under load; Schottky about half', '± 0.2 V'], usual: '0.2 V..1.5 V' }),
    },
    events: ['opens', 'shorts'],
    template: ['rating: ${1:30 A}'],
});
