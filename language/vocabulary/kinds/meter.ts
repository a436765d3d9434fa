import { facts, kind, part, slot, words } from '../define.js';

export default kind({
    name: 'meter',
    doc: 'Shows a value, does nothing.',
    group: 'current',
    on: ['hydrogen', 'oxygen', 'lye', 'water', 'current'],
    properties: {
        reads: words(['current-mean', 'current-rms', 'voltage', 'energy-at-plug', 'gas-volume', 'temperature', 'pressure', 'level', 'strength'], 'What it shows. Gas follows the mean current, heat the RMS current.', {}),
        on: part([], 'The part that it sits on. Volts are read at the stack, not at the supply.', {}),
        uncertainty: facts([[slot('', 'fraction')]], 'How far its reading may be off, as a share of the reading. An absolute ± stands at the reading itself.', { assume: ['2 %', 'a usual panel meter'], example: '${1:1 %}' }),
    },
    events: ['reads wrong'],
    template: ['reads: ${1|voltage,current-mean,temperature,pressure|}', 'on: ${2:stack}', 'uncertainty: ${3:1 %}'],
});
