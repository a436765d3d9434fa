import { addToList } from '../../path-fixes.js';
import { defineRule } from '../../define.js';
import { defined } from '../../fixes.js';

export default defineRule({
    name: 'output-device-fails-on',
    family: 'controls',
    severity: 'warning',
    summary: 'A single contactor or solid-state relay is all that every trip acts through.',
    why: 'Contacts weld, and solid-state relays usually fail switched on. Then all the trips trip, and nothing stops.',
    source: 'common practice, no source; failure of solid-state relays towards on: makers\' pages, from memory',
    guardsLife: true,
    on: ['stack', 'compressor'],
    check(v, tell) {
        const driven = v.kind === 'stack' ? v.controls.sources() : [v];
        const passed = driven.flatMap(d => v.controls.interrupters(d.name));
        if (passed.length !== 1 || !driven.some(d => v.controls.trips(d.name).length)) return;
        const source = driven.find(d => v.controls.interrupters(d.name).length)!;
        const more = [...v.controls.stoppers(source.name)].map(n => v.other(n)).find(o => o?.kind === 'contactor' && o.name !== passed[0].name);
        tell({
            at: source.at('needs'),
            message: passed[0].kind === 'solid-state-relay' ? `${passed[0].name} is all that stops ${source.name}, and such relays usually fail switched on: then no trip stops it.`
                : `${passed[0].name} is the only contact that stops ${source.name}; if it welds, no trip stops it.`,
            related: [{ span: passed[0].at(), message: 'the only one' }],
            fixes: defined(more && addToList(source, 'needs', more.name, `Lead it through ${more.name} as well`)),
        });
    },
});
