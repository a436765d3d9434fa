import { defineRule } from '../../define.js';
import { newest } from '../../records.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'separator-test-failed',
    family: 'separators and purity',
    severity: 'error',
    summary: 'The last test of the separators failed, or found more of the wrong gas than a trip allows.',
    why: 'A hole that was found once does not heal. Gas made through it can burn in both lines, and nobody sees it.',
    source: 'customary trips of 2 % hydrogen in oxygen and 1 % oxygen in hydrogen, from memory',
    guardsLife: true,
    from: 'built',
    on: 'separator',
    check(v, tell) {
        const tests = v.all('test').filter(t => t.names('covers').includes(v.name) && t.word('result'));
        const last = newest(tests);
        if (!last) return;
        const kept = ['bag', 'gasometer', 'compressor', 'cylinder'].some(kind => v.all(kind).length) ? ' Keep no gas, make none' : ' Make no gas';
        if (last.word('result') === 'failed') {
            tell({ at: last.at('result'), message: `The last test of the separators (${last.name}) failed.${kept} until they are renewed and have passed, wet, on one side alone.` });
            return;
        }
        const [oxygen, hydrogen] = [last.maybe('oxygen'), last.maybe('hydrogen')];
        if (tell.exceeds(oxygen, 0.01, '%', last, 'oxygen')) tell({ at: last.at('oxygen'), message: `${show(oxygen, '%', 2)} of oxygen was in the hydrogen at ${last.name}; 1 % is the usual trip. It did not pass.${kept} until the way is found.` });
        if (tell.exceeds(hydrogen, 0.02, '%', last, 'hydrogen')) tell({ at: last.at('hydrogen'), message: `${show(hydrogen, '%', 2)} of hydrogen was in the oxygen at ${last.name}; 2 % is the usual trip. It did not pass.${kept} until the way is found.` });
    },
});
