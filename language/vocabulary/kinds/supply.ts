import { driven } from '../driven.js';
import { facts, kind, part, points, quantity, slot, words, yesNo } from '../define.js';

export default kind({
    name: 'supply',
    called: ['psu', 'power-supply', 'power', 'source'],
    doc: 'What feeds the stack with direct current, as seen at its terminals: a bought supply, a converter, or a home-made chain taken as one.',
    group: 'current',
    on: ['current'],
    properties: {
        sort: words(['bench', 'switch-mode', 'transformer-rectifier', 'converter', 'battery-charger', 'direct-mains'],
            'What it is. It decides whether the mains is kept apart, whether the current is limited, and whether it conducts backwards.', {
                neverAssumed: true,
                called: { lab: 'bench', laboratory: 'bench', smps: 'switch-mode', psu: 'switch-mode', 'dc-dc': 'converter', buck: 'converter', boost: 'converter', 'step-down': 'converter', 'step-up': 'converter', charger: 'battery-charger', mains: 'direct-mains' },
            }),
        mains: facts([[slot('voltage', 'voltage'), slot('frequency', 'frequency', true)]], 'Voltage and frequency of the mains that it is plugged into.', {
            assume: ['230 V 50 Hz', 'the mains of most of the world'], example: '${1:230 V 50 Hz}',
        }),
        voltage: quantity('voltage', 'Voltage that it holds, as set. Cells in series share it.', { usual: '1 V..400 V', example: '${1:28 V}' }),
        'no-load': quantity('voltage', 'Voltage at its terminals with nothing connected. What bare metal can show when the stack is switched off.', { usual: '1 V..400 V', fact: true, example: '${1:30 V}' }),
        loaded: points('voltage', 'current', 'Voltage under load: one point at least. With the no-load voltage, or two points, the droop is known; without it the supply counts as stiff.', {
            example: '${1:24 V} at ${2:20 A}', fact: true,
        }),
        'current-limit': quantity('current', 'Current that it never passes, as set. Without a limit the current climbs as the lye warms.', { usual: '0.1 A..500 A', example: '${1:15 A}' }),
        'rated-current': quantity('current', 'Current that it can give for hours, as on its plate.', { fact: true, usual: '0.1 A..500 A', example: '${1:20 A}' }),
        isolated: yesNo('Its output is kept apart from the mains by a transformer made for that. Never taken for granted in a home-made one: the wet stack hangs on it.', { fact: true, neverAssumed: true }),
        'form-factor': quantity('number', 'RMS over mean of its current: 1 for smooth direct current, more for pulses.', { usual: '1..2.5' }),
        efficiency: quantity('fraction', 'Power given to the stack over power taken from the plug. It makes part of the cost of the gas.', { assume: ['88 %', 'usual for switch-mode and transformer supplies', '± 5 %'], usual: '40 %..99 %' }),
        'back-feeds': yesNo('Current can flow back into it from the charged stack when it is off. That wears the plates and can harm the supply.', {}),
        'soft-start': yesNo('It limits its own inrush when switched on. Without it a large transformer can throw the house breaker.', {}),
        'restarts-by-itself': yesNo('After a power cut it goes on by itself. Bought ones differ; try it.', { neverAssumed: true }),
        duty: quantity('fraction', 'Share of ten minutes that it may be loaded. Welder and appliance parts are below 100 %, and a rig runs for hours.', { assume: ['100 %', 'made for continuous use unless its plate says less'], usual: '5 %..100 %' }),
        follows: part([], 'It gives the stack what this gives, and no more, as roof.power.', { example: '${1:roof.power}' }),
        lowest: quantity('current', 'Current below which it switches the stack off. At low current the two gases spoil each other.', { example: '${1:3 A}' }),
        ...driven,
    },
    states: ['running', 'stopped'],
    events: ['stops', 'limit fails', 'runs away'],
    template: ['sort: ${1|bench,switch-mode,transformer-rectifier,converter|}', 'voltage: ${2:28 V}', 'current-limit: ${3:15 A}', 'isolated: ${4|yes,no|}'],
});
