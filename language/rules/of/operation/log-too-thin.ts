import { defineRule } from '../../define.js';

export default defineRule({
    name: 'log-too-thin',
    family: 'operation',
    severity: 'hint',
    summary: 'The log leaves out what every other figure is compared by.',
    why: 'Volts without amperes and warmth cannot be compared with yesterday\'s, and a cell that fails shows first in just that comparison.',
    source: 'common practice, no source',
    on: 'log',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack || v.says('file') === 'silent') return;
        const has = (key: string) => v.part.entries.has(key);
        const wanted: string[] = [];
        if (!has(`${stack.name}.voltage`) && !has(`${stack.name}.volts-per-cell`)) wanted.push('volts');
        if (!has(`${stack.name}.current`)) wanted.push('amperes');
        if (!has(`${stack.name}.temperature`)) wanted.push('temperature');
        if (!wanted.length) return;
        tell({ at: v.at('file'), message: `The log has no ${wanted.join(', no ')} of ${stack.name}: ${wanted.length === 3 ? 'nothing in it can be laid over the curve of the cells' : 'what it has cannot be compared from day to day'}.` });
    },
});
