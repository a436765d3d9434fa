import { date, facts, kind, quantity, slot, text, words, yesNo } from '../define.js';

export default kind({
    name: 'cylinder',
    called: ['tank', 'bottle', 'vessel', 'storage', 'gas-cylinder'],
    doc: 'Pressure store. What is stamped on it decides what it may hold, and a burst throws steel: its stamped figures are never guessed.',
    group: 'high side',
    on: ['hydrogen', 'oxygen'],
    ports: 'many',
    properties: {
        volume: quantity('volume', 'Water volume, as stamped.', { fact: true, usual: '0.3 L..150 L', example: '${1:20 L}' }),
        rating: quantity('pressure', 'Working pressure stamped on it. A measured or hoped-for figure never replaces it.', {
            fact: true, neverAssumed: true, usual: '2 bar..700 bar', example: '${1:20 bar}',
        }),
        'test-pressure': quantity('pressure', 'Test pressure stamped on it.', { fact: true, neverAssumed: true, usual: '3 bar..1100 bar', example: '${1:30 bar}' }),
        specification: text('Standard or approval stamped on it. Without one nobody can tell what it was made for.', { fact: true, neverAssumed: true }),
        'permitted-gas': text('Gas named on it. A cylinder for another gas may have unsuitable steel, valve or history.', { fact: true, neverAssumed: true }),
        sort: words(['hydrogen', 'LPG', 'disposable', 'air-receiver', 'scuba', 'extinguisher', 'industrial-gas', 'home-made'],
            'What it was made as. Putting a vessel to another use is the business of a test body.', { neverAssumed: true, fact: true }),
        'test-date': date('Date of the last periodic test, as stamped: 2024-11.', { neverAssumed: true, example: '${1:2024-11}' }),
        'test-interval': quantity('time', 'How long a test holds where you live.', { neverAssumed: true, fact: true, usual: '1 years..15 years', unit: 'years', example: '${1:10 years}' }),
        previous: words(['new', 'hydrogen', 'nitrogen', 'air', 'oxygen', 'propane', 'butane', 'acetylene', 'carbon-dioxide', 'argon', 'helium', 'refrigerant'],
            'What was in it before. Oil, air or fuel left inside mixes with the hydrogen.', { open: true, neverAssumed: true, fact: true }),
        outlet: facts([[slot('', 'thread')]], 'Thread of its valve outlet, with its hand: "W 21.8 x 1/14 LH". Flammable gas has a left-hand thread so that the wrong regulator does not fit.', {
            example: '"${1:W 21.8 x 1/14 LH}"', fact: true, neverAssumed: true,
        }),
        secured: words(['chained', 'strapped', 'lying', 'free-standing'], 'What keeps it from falling. A valve knocked off turns a full one into a rocket.', { neverAssumed: true }),
        label: text('What is written on it for others, as "HYDROGEN".'),
        'hand-valve': yesNo('It has a valve of its own that shuts it off by hand.', {}),
        'built-in-relief': quantity('pressure', 'Pressure at which its own relief opens. It counts only if that is not above the rating.', {
            fact: true, usual: '2 bar..700 bar', example: '${1|none,20 bar|}',
        }),
        'end-pressure': quantity('pressure', 'Pressure left in it when it counts as empty, so that no air gets in.', {
            assume: ['0.5 bar', 'enough to keep air out on a cold day', '± 0.2 bar'], usual: '0 bar..20 bar',
        }),
        steel: facts([[slot('', 'pressure')], [slot('seam', { words: ['welded', 'seamless'] })]],
            'Tensile strength, and whether it is welded: 600 MPa, welded. Strong hard steel is the one that hydrogen makes brittle.', {
                example: '${1:600 MPa}, ${2|welded,seamless|}', fact: true,
            }),
        place: text('Where it stands: indoors or out, in sun or shade.', { neverAssumed: true }),
    },
    events: ['leaks', 'warms', 'left shut'],
    template: [
        'volume: ${1:20 L}', 'rating: ${2:20 bar}', 'specification: "${3:as stamped}"', 'permitted-gas: "${4:hydrogen}"', 'test-date: ${5:2024-11}',
        'secured: ${6|chained,strapped,lying,free-standing|}', 'place: "${7:outside wall, shaded}"',
    ],
});
