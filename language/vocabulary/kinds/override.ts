import { kind, parts, quantity, words } from '../define.js';

export default kind({
    name: 'override',
    doc: 'Jumper, key or test mode that puts a switch or trip out of action. Left in, the guard is gone and nobody sees it.',
    group: 'control',
    properties: {
        bypasses: parts(['switch', 'trip', 'analyser', 'detector', 'timer', 'stop-button'], 'What it puts out of action.', { example: '${1:trip}', none: false }),
        'ends-after': quantity('time', 'Time after which it ends by itself; none if it does not.', { usual: '1 s..24 h', example: '${1|10 min,none|}', neverAssumed: true }),
        sort: words(['jumper', 'key', 'button', 'test-mode'], 'How it is done.', {}),
    },
    states: ['on', 'off'],
    events: ['set', 'removed', 'left in'],
    template: ['bypasses: ${1:trip}', 'ends-after: ${2|10 min,none|}', 'sort: ${3|key,jumper,button,test-mode|}'],
});
