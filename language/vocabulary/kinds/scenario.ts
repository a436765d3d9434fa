import { anything, facts, kind, parts, quantity, schedule, slot } from '../define.js';

export default kind({
    name: 'scenario',
    doc: 'A stretch of time to run through: when it starts, the weather, what stands in the vessels, and what happens when.',
    group: 'statements',
    statement: 'scenario',
    properties: {
        starts: facts([[slot('date', 'date', true), slot('clock', 'clock', true)]], 'When it starts: 2026-11-21 15:30, or 15:30 alone.', { example: '${1:08:00}' }),
        lasts: quantity('time', 'How long it runs.', { assume: ['24 h', 'a day and a night'], usual: '1 min..60 days', unit: 'h' }),
        weather: schedule('temperature', 'Air temperature by the clock: 6 °C at 16:00, -2 °C at 23:00. One value holds throughout.', { example: '${1:12 °C}' }),
        sun: schedule('irradiance', 'Sunshine on the panels by the clock. That of the site if not said.', { example: '${1:0 W/m2} at ${2:06:00}, ${3:500 W/m2} at ${4:12:00}' }),
        with: parts(['variant'], 'The variants of the rig that it runs with.', { example: '${1:winter}' }),
        events: anything('What happens, each with its time: 08:05 start-button pressed, 09:30 bag-empty sticks made, after 2 h control lost.', {
            example: '${1:08:05} ${2:start-button} ${3:pressed}',
        }),
    },
    template: ['starts: ${1:08:00}', 'lasts: ${2:8 h}', 'weather: ${3:12 °C}', 'events: ${4:08:05} ${5:start-button} ${6:pressed}'],
});
