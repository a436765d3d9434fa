import { controlProperties as control } from '../control-properties.js';
import { count, facts, kind, quantity, slot, text, words, yesNo } from '../define.js';

export default kind({
    name: 'compressor',
    called: ['pump'],
    doc: 'Draws hydrogen from the bag and presses it into the store. It can also draw air in, and what it then stores may burn inside the cylinder.',
    group: 'high side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        sort: words(['hermetic-reciprocating', 'hermetic-rotary', 'open-piston', 'diaphragm', 'other'],
            'How it is built. In a hermetic one the motor stands in the gas; in an open one gas passes the piston into the crankcase.', { neverAssumed: true }),
        displacement: quantity('volume', 'Volume swept in one turn. With the speed it sets how much it can draw.', { usual: '1 cm3..100 cm3', unit: 'cm3', example: '${1:10 cm3}', fact: true }),
        speed: quantity('frequency', 'Turns per minute under load.', { assume: ['2900 rpm', 'a two-pole motor on 50 Hz mains', '± 2 %'], usual: '200 rpm..6000 rpm', unit: 'rpm' }),
        stages: count('Stages in which it presses, one after the other, each drawing what the one before delivers. Its displacement is then that of the first; the others are taken to be sized so that each presses by the same ratio at the cut-off.', {
            assume: ['1', 'nothing said'], usual: '1..5', fact: true,
        }),
        'cooled-to': quantity('temperature', 'Temperature down to which the gas is cooled before the next stage, or before the next compressor on its way; none if nothing cools it there.', {
            assume: ['20 °C', 'a length of bare tube in the room', '± 10 K'], usual: '0 °C..90 °C',
        }),
        clearance: quantity('number', 'Volume left at the end of a stroke, as a share of the swept volume. The gas left there expands again and takes room from fresh gas.', {
            assume: ['0.05', 'small piston machines lie near it', '± 0.02'], usual: '0.01..0.15', positive: true,
        }),
        polytropic: quantity('number', 'Exponent of the expansion of the gas left in the clearance: 1.4 without any heat exchange, 1 at constant temperature.', {
            assume: ['1.3', 'some heat passes to the walls', '± 0.08'], usual: '1..1.41', positive: true,
        }),
        'leak-back': quantity('number', 'Share of the delivery that slips back past rings and valves. Hydrogen slips more than the gas it was built for; a measured value replaces this.', {
            assume: ['0.15', 'hydrogen is thin; few have measured it', '± 0.1'], usual: '0..0.5',
        }),
        'discharge-volume': quantity('volume', 'Gas space between the compressor and the check valve behind it. The unloader must empty it before a start.', {
            assume: ['0.5 L', 'a short line with a filter and a dryer', '± 0.3 L'], usual: '0.02 L..10 L',
        }),
        'max-pressure': quantity('pressure', 'Highest discharge pressure on its plate.', { fact: true, neverAssumed: true, usual: '1 bar..400 bar', example: '${1:16 bar}' }),
        'shell-rating': quantity('pressure', 'Pressure that its closed shell may hold. A shell on the suction side sees store pressure when a valve leaks.', {
            fact: true, neverAssumed: true, usual: '1 bar..60 bar', example: '${1:16 bar}',
        }),
        'shell-volume': quantity('volume', 'Gas space inside the shell. Air left in it goes into the first fill.', {
            assume: ['3 L', 'small refrigeration shells hold two to four litres', '± 1 L'], usual: '0.2 L..20 L',
        }),
        oil: facts([[slot('', { words: ['mineral', 'PAO', 'POE', 'PAG', 'none'] })], [slot('charge', 'volume')], [slot('loss', 'flow')]],
            'Which oil, how much, and how much is carried off: mineral, 300 mL, 0.2 mL/h. POE and PAG suffer from water and lye.', {
                example: '${1|mineral,PAO,POE,PAG,none|}, ${2:300 mL}',
            }),
        start: words(['PTC', 'capacitor', 'relay', 'electronic'], 'What helps its motor to start. A PTC must cool before it can help again.', {
            assume: ['PTC', 'usual on small hermetic ones'],
        }),
        'starts-against': quantity('pressure', 'Highest pressure difference against which it starts. Above it the motor stands still and heats.', {
            assume: ['0.3 bar', 'types for capillary systems start nearly unloaded', '± 0.2 bar'], usual: '0 bar..30 bar',
        }),
        'min-off': quantity('time', 'Shortest rest between two runs.', { assume: ['5 min', 'a PTC needs that long to cool', '± 2 min'], usual: '0.5 min..30 min', unit: 'min' }),
        power: quantity('power', 'Electrical power while it runs, as on its plate.', { fact: true, usual: '20 W..5000 W', example: '${1:180 W}' }),
        current: quantity('current', 'Running current, as on its plate.', { fact: true, usual: '0.1 A..25 A', example: '${1:1.2 A}' }),
        'locked-rotor': quantity('current', 'Current when the motor is held, as on its plate. Contacts and breaker must bear it at each start.', { fact: true, usual: '0.5 A..150 A', example: '${1:9 A}' }),
        crankcase: words(['sealed', 'open', 'to-suction', 'to-outdoors'], 'Where the gas goes that passes the piston. An open crankcase breathes hydrogen into the room.', { neverAssumed: true }),
        'start-gear-distance': quantity('length', 'Distance of its relay, capacitor box or plug from the nearest gas joint. Start gear sparks.', {
            neverAssumed: true, usual: '0.05 m..20 m', unit: 'm', example: '${1:1.5 m}',
        }),
        fan: yesNo('A fan blows on its shell.', { assume: ['no', 'nothing said'] }),
        'listed-for-hydrogen': yesNo('Its maker names hydrogen as a gas it may draw.', { assume: ['no', 'hardly any small one is'], fact: true }),
        cooling: quantity('number', 'How hot the gas leaves: 1 keeps all the heat of compression, lower means that the walls take some. Measure the discharge to replace it.', {
            assume: ['0.4', 'slow flow through a hot shell; measured ones differ widely', '± 0.2'], usual: '0.2..1', positive: true,
        }),
        needs: control.needs,
        'stopped-by': control['stopped-by'],
        'fed-from': control['fed-from'],
        place: text('Where it stands.'),
    },
    states: ['running', 'stopped'],
    events: ['stalls', 'stops', 'valves worn', 'leaks', 'fan stops'],
    template: [
        'sort: ${1|hermetic-reciprocating,hermetic-rotary,open-piston,diaphragm,other|}', 'displacement: ${2:10 cm3}', 'speed: ${3:2900 rpm}',
        'max-pressure: ${4:16 bar}', 'oil: ${5|mineral,PAO,POE,PAG,none|}', 'needs: ${6:compressor-contactor}',
    ],
});
