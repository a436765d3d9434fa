import { facts, kind, slot, words, yesNo } from '../define.js';

export default kind({
    name: 'filter',
    doc: 'Catches oil, dust or vapours.',
    group: 'low side',
    on: ['hydrogen', 'oxygen', 'lye', 'water'],
    properties: {
        sort: words(['oil', 'carbon', 'dust'], 'What it catches: oil mist, vapours (carbon) or dust.', {}),
        'returns-oil': yesNo('Oil that it catches goes back to the compressor. Otherwise the compressor slowly runs dry.', { assume: ['no', 'nothing said'] }),
        rating: facts([[slot('', 'pressure'), 'at?', slot('at', 'temperature', true)]], 'Pressure that it bears, and at which temperature, by its maker.', { fact: true, example: '${1:25 bar}' }),
    },
    events: ['blocked', 'passes'],
    template: ['sort: ${1|oil,carbon,dust|}'],
});
