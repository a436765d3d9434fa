import { facts, kind, quantity, slot, words } from '../define.js';
import { materialsFor } from '../materials.js';
import { recordProperties as record } from '../record-properties.js';

export default kind({
    name: 'test',
    doc: 'A test that was done, with what and with which result. It speaks for the parts as they were that day; change one, and it is stale.',
    group: 'records',
    properties: {
        date: record.date,
        by: record.by,
        covers: record.covers,
        with: record.with,
        what: record.what,
        pressure: quantity('pressure', 'Pressure at the start of the test.', { fact: true, usual: '0.01 kPa..1100 bar', example: '${1:2 kPa}' }),
        lasted: quantity('time', 'How long it was held.', { fact: true, usual: '5 s..2 years', example: '${1:30 min}' }),
        drop: quantity('pressure', 'How much the pressure fell in that time.', { fact: true, example: '${1:0.02 kPa}' }),
        limit: quantity('pressure', 'Largest drop that counts as passed. Worked out from the rig if not said.', { example: '${1:0.05 kPa}' }),
        temperature: quantity('temperature', 'Temperature during the test, from start to end: 18..19 °C. A small change of it looks like a leak, or hides one.', { fact: true, example: '${1:18..19 °C}' }),
        'level-change': quantity('length', 'How far the level of the pressed side moved in that time: lye that seeps through a separator, or gas that breaks through it.', { fact: true, positive: false, unit: 'mm', usual: '0 mm..500 mm', example: '${1:4 mm}' }),
        oxygen: quantity('fraction', 'Share of oxygen found in the hydrogen.', { fact: true, usual: '0 %..25 %', example: '${1:0.2 %}' }),
        hydrogen: quantity('fraction', 'Share of hydrogen found in the oxygen.', { fact: true, usual: '0 %..80 %', example: '${1:0.5 %}' }),
        'lifts-at': quantity('pressure', 'Pressure at which a relief opened.', { fact: true, example: '${1:13 bar}' }),
        sample: words(materialsFor('vessel', 'tube', 'gasket', 'board', 'cloth', 'plate'), 'Material of a piece that was hung in lye to see what becomes of it. Then lasted, temperature and strength say how.', { open: true, fact: true }),
        strength: quantity('mass-fraction', 'Strength of the lye that a sample hung in.', { fact: true, positive: true, usual: '1 wt%..50 wt%', example: '${1:30 wt%}' }),
        'mass-change': quantity('fraction', 'How much heavier a sample was at the end, rinsed and dried; negative for lighter. Swelling and dissolving show there before the eye sees them.', { fact: true, positive: false, usual: '-20 %..30 %', example: '${1:0.4 %}' }),
        result: facts([[slot('', { words: ['passed', 'failed'] })], [slot('remark', 'any')]], 'passed or failed, and what was seen: failed, stuck until cleaned.', {
            example: '${1|passed,failed|}', fact: true,
        }),
    },
    template: ['date: ${1:2026-01-31}', 'by: ${2:name}', 'covers: ${3:part}', 'with: ${4:nitrogen}', 'pressure: ${5:2 kPa}', 'lasted: ${6:30 min}', 'drop: ${7:0.02 kPa}', 'result: ${8|passed,failed|}'],
});
