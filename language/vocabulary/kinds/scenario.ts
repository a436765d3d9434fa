import { anything, facts, kind, parts, quantity, schedule, slot } from '../define.js';

export default kind({
    name: 'scenario',
    doc: 'A day in the life of the rig: when it starts, the weather, what happens at what time.',
    group: 'statements',
    statement: 'scenario',
    properties: {
        starts: facts([[slot('', 'clock')], [slot('date', 'date')]], 'When it begins: 14:00, or 2026-11-21 15:30.', { example: '${1:10:00}' }),
        lasts: quantity('time', 'How long it goes on.', { unit: 'h', example: '${1:8 h}' }),
        weather: schedule('temperature', 'Temperature by the clock.', { example: '${1:12 °C} at ${2:10:00}' }),
        with: parts(['variant'], 'Variants that hold in it.', {}),
        events: anything('What happens, one line each: 15:35 start-button pressed.', { example: '${1:10:05 start-button pressed}' }),
    },
    template: ['starts: ${1:10:00}', 'lasts: ${2:8 h}', 'events: ${3:10:05 start-button pressed}'],
});
