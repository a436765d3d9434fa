import { defineRule } from '../../define.js';

export default defineRule({
    name: 'trip-never-proven',
    family: 'operation',
    severity: 'warning',
    summary: 'No test on record shows that this guard acts.',
    why: 'A guard that has stuck looks like one that was never needed.',
    source: 'common practice, no source',
    from: 'built',
    on: ['trip', 'analyser', 'detector'],
    check(v, tell) {
        if (!v.controls.stops(v.name).length) return;
        const tests = v.all('test').filter(t => t.names('covers').includes(v.name) && t.word('result') === 'passed');
        if (!tests.length) {
            tell({ at: v.at(), message: `Nothing on record shows that ${v.name} acts: move what it senses, and see the rig stop.` });
            return;
        }
        const last = tests.map(t => t.word('date') ?? '').sort().at(-1)!;
        if (!tell.today || !last || !(Date.parse(tell.today) - Date.parse(last.slice(0, 10).padEnd(10, '-01')) > 366 * 86400000)) return;
        tell({ at: v.at(), severity: 'hint', message: `${v.name} was last seen to act on ${last}, more than a year ago.` });
    },
});
