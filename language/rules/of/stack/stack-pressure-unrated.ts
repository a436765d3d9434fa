import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'stack-pressure-unrated',
    family: 'stack',
    severity: 'error',
    summary: 'The stack works at more pressure than it was tested for.',
    why: 'Flat plates carry pressure times area, a tonne on a hand\'s breadth soon, with hydrogen and oxygen inside.',
    source: 'water test at 1.5 times the working pressure, practice of ISO 22734 and pressure equipment, from memory; 10 kPa ' +
        'untested: common practice, no source',
    guardsLife: true,
    on: 'stack',
    check(v, tell) {
        const head = Math.max(v.maybeQ('hydrogen-head', 0), v.maybeQ('oxygen-head', 0));
        const tested = v.maybe('test-pressure');
        if (!tell.exceeds(head, tested === tested ? tested / 1.5 : 10e3, 'kPa', v, 'test-pressure')) return;
        const force = v.maybeQ('face-force');
        const each = force > 100 ? ` Each face then carries ${show(force, 'kN', 2)}.` : '';
        tell({
            at: v.at('test-pressure'),
            message: tested === tested
                ? `It works at ${show(head, 'kPa')} and was tested at ${show(tested, 'kPa')}; the test must stand one and a half ` +
                    `times above.${each}`
                : `It works at ${show(head, 'kPa')} and no test with water is stated; 10 kPa is the limit without one.${each}`,
        });
    },
});
