import { facts, kind, quantity, slot, words } from '../define.js';

export default kind({
    name: 'fuse',
    called: ['circuit-breaker'],
    doc: 'Fuse or breaker in the way of the current. It protects the cable behind it, nothing else.',
    group: 'current',
    on: ['current'],
    properties: {
        rating: quantity('current', 'Its rated current: above the working current, and not above what the lead behind it bears.', { usual: '0.1 A..400 A', example: '${1:20 A}' }),
        distance: facts([[slot('', 'length'), 'from?', slot('from', { part: [] }, true)]], 'How far from the terminal of its source. The cable before it is not protected.', { example: '${1:100 mm} from ${2:battery}', neverAssumed: true }),
        'dc-rating': quantity('voltage', 'Direct voltage that it can break. An arc of direct current does not go out by itself.', { fact: true, usual: '4 V..1500 V', example: '${1:80 V}' }),
        curve: words(['fuse', 'B', 'C', 'D'], 'How soon it acts on a surge: a fuse, or a breaker of curve B, C or D.', { assume: ['fuse', 'nothing said'] }),
    },
    events: ['blows', 'blows late'],
    template: ['rating: ${1:20 A}', 'dc-rating: ${2:80 V}'],
});
