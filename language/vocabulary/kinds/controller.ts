import { controlProperties as control } from '../control-properties.js';
import { kind, part, parts, text, words } from '../define.js';

export default kind({
    name: 'controller',
    doc: 'Program that decides. It can hang with its outputs as they were, so no trip should rest on it alone.',
    group: 'control',
    properties: {
        decides: parts(['switch', 'trip', 'analyser', 'detector', 'timer', 'relay', 'contactor', 'solid-state-relay'],
            'The switches, trips and relays that exist only in its program, or that pass through it.', { example: '${1:trip}' }),
        watchdog: part(['contactor', 'relay'], 'The contactor or relay that drops by itself when the program hangs; none if there is none.', {
            neverAssumed: true, example: '${1|none,main|}',
        }),
        'if-frozen': words(['holds', 'drops'], 'What its outputs do when the program hangs.', { assume: ['holds', 'outputs stay as they were unless something drops them'] }),
        'if-unpowered': words(['drops', 'holds'], 'What its outputs do without supply.', { assume: ['drops', 'outputs need its supply'] }),
        'fed-from': control['fed-from'],
        place: text('Where it sits.'),
    },
    states: ['running', 'stopped', 'frozen'],
    events: ['freezes', 'restarts', 'stops'],
    template: ['decides: ${1:trip}', 'watchdog: ${2|none,main|}'],
});
