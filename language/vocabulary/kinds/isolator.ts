import { facts, kind, parts, slot, yesNo } from '../define.js';

export default kind({
    name: 'isolator',
    called: ['breaker-switch', 'disconnector'],
    doc: 'Main switch for work on the rig: it cuts everything but fan and gas detector, and can be locked.',
    group: 'current',
    on: ['current'],
    properties: {
        cuts: parts([], 'What it cuts, where it does not stand on the current path itself.', { example: '${1:supply}' }),
        lockable: yesNo('A padlock holds it off, so that nobody switches on while somebody works.', {}),
        rating: facts([[slot('', 'current'), 'at?', slot('voltage', 'voltage', true), slot('sort', { words: ['AC', 'DC'] }, true)]], 'Current that it may switch, and whether that is direct or alternating. A switch for alternating current burns on under direct current.', { fact: true, example: '${1:40 A DC}' }),
    },
    events: ['left on'],
    template: ['rating: ${1:40 A DC}', 'lockable: ${2|yes,no|}'],
});
