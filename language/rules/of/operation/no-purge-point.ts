import { append } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { freeName } from '../../path-fixes.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'no-purge-point',
    family: 'operation',
    severity: 'warning',
    summary: 'There is no place to let nitrogen in, or the air out, before hydrogen comes.',
    why: 'Without one the lines can only be purged with hydrogen, straight through the mixtures that explode; first fill, service and the end of the rig all need it.',
    source: 'common practice, no source; purging before hydrogen: ISO/TR 15916, from memory',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        const stack = v.the('stack');
        const line = new Set(v.paths.on('hydrogen'));
        if (!stack || !line.size) return;
        const pressed = [...v.all('compressor'), ...v.all('cylinder')].filter(p => line.has(p.name));
        const soft = v.all('gasometer').filter(p => line.has(p.name));
        if (!pressed.length && !soft.length) return;
        const points = v.all('purge-point').filter(p => line.has(p.name) || line.has(p.names('on')[0] ?? p.word('on') ?? ''));
        const wanted = pressed.length ? 2 : 1;
        if (points.length >= wanted) return;
        const first = pressed[0] ?? soft[0];
        const column = v.all('column').find(c => line.has(c.name))?.name ?? stack.name;
        const near = freeName(v, 'line-purge');
        const far = freeName(v, 'store-purge');
        const text = [`purge-point ${near} { on: ${column} }`, ...(pressed.length ? [`purge-point ${far} { on: ${pressed.at(-1)!.name} }`] : [])].join('\n');
        tell({
            at: first.at(), severity: missing(tell, pressed.length ? (points.length ? 'hint' : 'warning') : 'hint'),
            message: points.length ? `There is one purge point on the hydrogen line; with ${first.name} on it each end needs one, to let nitrogen in and air out.` : `Nitrogen cannot be let into the hydrogen line: the air before ${first.name} could only be driven out by hydrogen itself.`,
            fixes: points.length ? [] : [append(v, text, pressed.length ? 'Plan a purge point at each end' : `Plan a purge point on ${column}`)],
        });
    },
});
