import { anything, date, parts, rows, slot, text } from './define.js';

/** Properties that records and statements share, so that they mean the same in each. Not a kind. */
export const recordProperties = {
    date: date('When it was, with the time of day if that matters: 2026-03-14 15:10.'),
    by: text('Who did it or saw it.', { example: '${1:name}' }),
    covers: parts([], 'The parts it speaks for, or a stretch of path: h2-column to bag. If one of them is changed later, the record is stale.', {
        example: '${1:part}', fact: true,
    }),
    with: anything('What it was done with and how, the gas first: nitrogen, both sides linked.', { example: '${1:nitrogen}', fact: true }),
    what: text('What was done or found, in a few words.', { fact: true }),
    why: text('The reason, for whoever reads this in a year.'),
    conditions: rows([slot('what', 'quantity'), slot('value', 'sensed')],
        'What else was so at that time: stack.temperature 50 °C, lye.strength 28 wt%. Figures without their conditions cannot be compared.', {
            example: '${1:stack.temperature} ${2:50 °C}', fact: true,
        }),
};
