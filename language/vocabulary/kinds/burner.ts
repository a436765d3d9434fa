import { facts, kind, quantity, rows, slot, text, words } from '../define.js';

export default kind({
    name: 'burner',
    called: ['torch', 'flame', 'stove'],
    doc: 'Burns the hydrogen. Its flame can hardly be seen, goes out unnoticed, and strikes back where gas and air are mixed before the tip.',
    group: 'use',
    on: ['hydrogen', 'oxygen'],
    ports: 'many',
    properties: {
        sort: words(['diffusion', 'premix', 'natural-gas', 'LPG', 'torch-two-gas', 'torch-common-duct'],
            'How it takes its air. One made for natural gas or LPG mixes air in before the tip, where a hydrogen flame runs back.', { neverAssumed: true }),
        flow: quantity('gas-flow', 'Hydrogen it burns.', { usual: '1 NL/h..100 Nm3/h', example: '${1:300 L/h}' }),
        pressure: quantity('pressure', 'Pressure it needs.', { usual: '0.01 kPa..10 bar', example: '${1:1 kPa}' }),
        tip: facts([[slot('count', 'count', true), 'of?', slot('', 'length')]],
            'Number and bore of its holes: 6 of 0.7 mm. They set the speed at the tip: too fast and the flame lifts off, too slow and it strikes back.', {
                example: '${1:6} of ${2:0.7 mm}',
            }),
        'flame-proof': words(['none', 'thermocouple', 'eye'], 'What sees that it burns and shuts the gas if not.', { neverAssumed: true }),
        rating: quantity('pressure', 'Highest pressure it may have.', { fact: true, neverAssumed: true, usual: '0.1 kPa..60 bar', example: '${1:4 bar}' }),
        lines: rows([slot('gas', { words: ['hydrogen', 'oxygen', 'air'] }), slot('', { words: ['both', 'arrestor', 'check-valve', 'neither'] })],
            'What the torch itself has in each of its lines: hydrogen both, oxygen arrestor. Parts that stand on a path need not be said again.', {
                example: 'hydrogen ${1|both,arrestor,check-valve,neither|}, oxygen ${2|both,arrestor,check-valve,neither|}',
            }),
        place: text('Where it stands.'),
    },
    states: ['running', 'stopped', 'lit', 'out'],
    events: ['draws', 'lit', 'shut', 'goes out', 'blocked'],
    template: [
        'sort: ${1|diffusion,premix,natural-gas,LPG,torch-two-gas,torch-common-duct|}', 'flow: ${2:300 L/h}', 'tip: ${3:6} of ${4:0.7 mm}',
        'flame-proof: ${5|none,thermocouple,eye|}',
    ],
});
