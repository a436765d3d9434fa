import { kind, quantity, words, yesNo } from '../define.js';

export default kind({
    name: 'rectifier',
    doc: 'Diodes that turn the current of a transformer into one direction. Without it both gases form on every plate.',
    group: 'current',
    on: ['current'],
    properties: {
        circuit: words(['bridge', 'centre-tap', 'half-wave', 'three-phase-bridge', 'none'], 'How the diodes are joined. It decides the heat in the winding and the reverse voltage on each diode; without diodes both gases form on every plate.', { assume: ['bridge', 'the usual one'] }),
        'forward-drop': quantity('voltage', 'Voltage lost in one diode; in a bridge two conduct at a time.', { assume: ['1.0 V', 'silicon under load; Schottky about half', '± 0.2 V'], usual: '0.2 V..1.5 V' }),
        'reverse-rating': quantity('voltage', 'Reverse voltage that each diode bears, by its data sheet. Peaks of the unloaded winding must stay well below it.', { fact: true, usual: '20 V..2000 V', example: '${1:200 V}' }),
        sink: quantity('thermal-resistance', 'Thermal resistance of the heat sink to the air.', { usual: '0.05 K/W..20 K/W', example: '${1:1 K/W}' }),
        'junction-to-sink': quantity('thermal-resistance', 'Thermal resistance from inside the diode to the sink.', { assume: ['1.1 K/W', 'usual on data sheets of bridges', '± 0.5 K/W'], usual: '0.1 K/W..5 K/W' }),
        'max-junction': quantity('temperature', 'Highest temperature inside the diode, by its data sheet.', { assume: ['150 °C', 'usual for silicon'], usual: '100 °C..200 °C' }),
        fan: yesNo('A fan blows on the sink. Sink figures with airflow hold only then.', { assume: ['no', 'nothing said'] }),
    },
    events: ['one diode opens', 'one diode shorts'],
    template: ['circuit: ${1|bridge,centre-tap|}', 'forward-drop: ${2:1.0 V}', 'reverse-rating: ${3:200 V}', 'sink: ${4:1 K/W}'],
});
