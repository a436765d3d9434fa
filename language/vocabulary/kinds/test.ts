import { anything, date, facts, kind, parts, quantity, slot, text } from '../define.js';

export default kind({
    name: 'test',
    doc: 'A test that was done: what it covered, with what, and how it ended. A later change to a part makes it old.',
    group: 'records',
    properties: {
        date: date('Day on which it was done or read.'),
        by: text('Name of who did or read it.'),
        covers: parts([], 'Parts that it covers; `h2-column to bag` for all on the path between.', { example: '${1:h2-column}' }),
        with: anything('Gas or means, and how.', { example: '${1:nitrogen}, ${2:both sides linked}' }),
        pressure: quantity('pressure', 'Pressure at its start.', { fact: true, unit: 'kPa' }),
        lasted: quantity('time', 'How long it was watched.', { fact: true, unit: 'min' }),
        drop: quantity('pressure', 'How far the pressure fell.', { fact: true, unit: 'kPa', positive: false }),
        result: facts([[slot('', { words: ['passed', 'failed'] })], [slot('remark', 'any')]], 'How it ended.', { example: '${1|passed,failed|}', fact: true }),
        temperature: quantity('temperature', 'Temperature at the time.', { fact: true }),
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'covers: ${3:h2-column}', 'with: ${4:nitrogen}, ${5:both sides linked}', 'pressure: ${6:2 kPa}', 'lasted: ${7:30 min}', 'drop: ${8:0.02 kPa}', 'result: ${9|passed,failed|}'],
});
