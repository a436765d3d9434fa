import { kind, quantity, text, words } from '../define.js';

export default kind({
    name: 'regulator',
    doc: 'Brings store pressure down to what the user needs. A leaking seat lets the store pressure creep through, so what stands behind it needs a guard of its own.',
    group: 'high side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        'listed-for': words(['hydrogen', 'oxygen', 'LPG', 'inert', 'CO2', 'air', 'home-made'], 'The gas its maker names. One for LPG is not made for hydrogen or for this pressure.', {
            fact: true, neverAssumed: true,
        }),
        'inlet-rating': quantity('pressure', 'Highest inlet pressure on its plate.', { fact: true, neverAssumed: true, usual: '1 bar..400 bar', example: '${1:60 bar}' }),
        set: quantity('pressure', 'Outlet pressure it is set to.', { usual: '0.01 bar..60 bar', example: '${1:1.2 bar}' }),
        'max-outlet': quantity('pressure', 'Highest outlet pressure it can be turned to. Somebody will.', { fact: true, neverAssumed: true, usual: '0.01 bar..100 bar', example: '${1:3 bar}' }),
        'has-relief': quantity('pressure', 'Pressure at which a relief on its outlet opens; none if there is none.', {
            fact: true, neverAssumed: true, usual: '0.01 bar..100 bar', example: '${1|none,2 bar|}',
        }),
        orifice: quantity('length', 'Bore of its seat: how much comes through when it fails open.', { fact: true, neverAssumed: true, usual: '0.3 mm..15 mm', example: '${1:2 mm}' }),
        place: text('Where it sits.'),
    },
    events: ['creeps', 'sticks open', 'sticks shut'],
    template: ['listed-for: ${1|hydrogen,oxygen,LPG,inert,CO2|}', 'inlet-rating: ${2:60 bar}', 'set: ${3:1.2 bar}', 'max-outlet: ${4:3 bar}', 'has-relief: ${5|none,2 bar|}'],
});
