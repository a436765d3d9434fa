import { kind, quantity } from '../define.js';

export default kind({
    name: 'capacitor',
    doc: 'Smoothing capacitor behind a rectifier. An electrolyser does not need one, and it heats the winding.',
    group: 'current',
    on: ['current'],
    properties: {
        capacitance: quantity('capacitance', 'Capacitance of all smoothing capacitors together.', { usual: '0.1 mF..1 F', example: '${1:22 mF}' }),
        rating: quantity('voltage', 'Voltage that each of them bears. At no load the peak of the winding stands on it.', { fact: true, usual: '4 V..500 V', example: '${1:63 V}' }),
        'ripple-rating': quantity('current', 'Ripple current that all together bear at 100 Hz. More of it dries them out.', { fact: true, usual: '0.1 A..200 A', example: '${1:12 A}' }),
        bleed: quantity('resistance', 'Resistor that empties it when the mains is off. Without one it can stay charged for hours.', { usual: '1 ohm..1000 kohm', example: '${1:470 ohm}' }),
    },
    events: ['shorts', 'dries out'],
    template: ['capacitance: ${1:22 mF}', 'rating: ${2:63 V}', 'bleed: ${3:470 ohm}'],
});
