import { controlProperties as control } from '../control-properties.js';
import { facts, kind, quantity, slot, words } from '../define.js';

export default kind({
    name: 'valve',
    doc: 'Shuts a line off, by hand or by power.',
    group: 'low side',
    on: ['hydrogen', 'oxygen', 'lye', 'water'],
    properties: {
        sort: words(['hand', 'solenoid', 'motor'], 'What moves it: a hand, a magnet or a motor.', { assume: ['hand', 'nothing said'] }),
        'if-unpowered': control['valve-if-unpowered'],
        'shut-while': control['shut-while'],
        'opened-by': control['opened-by'],
        'open-while': control['open-while'],
        'shut-by': control['shut-by'],
        bore: quantity('length', 'Narrowest width inside when open.', { usual: '0.3 mm..100 mm', example: '${1:10 mm}' }),
        rating: facts([[slot('', 'pressure'), 'at?', slot('at', 'temperature', true)]], 'Pressure that it bears, and at which temperature, by its maker.', { fact: true, example: '${1:25 bar}' }),
        'fed-from': control['fed-from'],
    },
    states: ['open', 'shut'],
    events: ['sticks open', 'sticks shut', 'left open', 'left shut', 'passes'],
    template: ['sort: ${1|hand,solenoid|}'],
});
