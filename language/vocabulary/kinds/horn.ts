import { controlProperties as control } from '../control-properties.js';
import { conditions, kind, text, words } from '../define.js';

export default kind({
    name: 'horn',
    doc: 'Horn or lamp that warns people. It stops nothing.',
    group: 'control',
    properties: {
        'sounded-by': conditions('What makes it sound: any one of these. The alarm point of a detector is said as gas-watch.alarm.', { example: '${1:gas-watch}.alarm' }),
        sort: words(['horn', 'lamp', 'both'], 'What people notice.', { assume: ['horn', 'what its name says'] }),
        'if-wire-breaks': words(['sounds', 'nothing'], 'Whether a broken wire is heard.', { neverAssumed: true }),
        'fed-from': control['fed-from'],
        place: text('Where it can be heard or seen.'),
    },
    states: ['sounding', 'silent', 'running', 'stopped'],
    events: ['fails', 'wire breaks'],
    template: ['sounded-by: ${1:gas-watch}.alarm', 'fed-from: ${2:fan-line}'],
});
