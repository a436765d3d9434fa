import { extracts } from '../../../quantities/surroundings.js';
import { append, defined } from '../../fixes.js';
import { defineRule } from '../../define.js';
import { addToList, freeName, listEdit, together } from '../../path-fixes.js';
import { onceBuilt } from '../../stage.js';
import { runsAlone } from '../../place.js';

export default defineRule({
    name: 'emergency-stop-incomplete',
    family: 'controls',
    severity: 'error',
    summary: 'The emergency stop leaves something running that feeds the fire, or stops what must go on.',
    why: 'Whoever presses it believes that all is off. Ventilation and gas detection must go on: they are needed most then.',
    source: 'ISO 13850, from memory; ventilation stays on in an emergency: hydrogen best-practice pages (h2tools.org)',
    guardsLife: true,
    on: 'rig',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack) return;
        const buttons = v.all('stop-button');
        const compressors = v.all('compressor');
        if (!buttons.length) {
            const fed = v.controls.sources();
            if (!compressors.length && !(runsAlone(v) && fed.length)) return;
            const main = [...v.all('contactor')].find(c => c.names('latched-by').length);
            const name = freeName(v, 'emergency');
            tell({
                at: (compressors[0] ?? fed[0]).at(), severity: onceBuilt(tell, 'warning', 'hint'), message: 'There is no emergency stop: one by the door should stop stack and compressor, and leave fan and gas detector on.',
                fixes: defined(main && together('Plan one by the door', append(v, `stop-button ${name} { resets: by hand   place: "by the door" }`, ''), listEdit(main, 'stopped-by', name))),
            });
            return;
        }
        const stopped = v.controls.stackStoppers();
        const fed = v.controls.sources();
        if (fed.length && !buttons.some(b => stopped.has(b.name))) {
            tell({ at: buttons[0].at(), message: `${buttons[0].name} does not stop ${fed.at(-1)!.name}: the stack makes gas on.`, related: [{ span: fed.at(-1)!.at(), message: 'runs on' }],
                fixes: defined(addToList(fed.at(-1)!.names('needs').map(n => v.other(n)).find(o => o?.kind === 'contactor') ?? fed.at(-1)!, 'stopped-by', buttons[0].name, `Let it stop ${fed.at(-1)!.name}`)) });
        }
        for (const c of compressors) {
            if (!buttons.some(b => v.controls.stoppers(c.name).has(b.name))) tell({ at: buttons[0].at(), message: `${buttons[0].name} does not stop ${c.name}: it goes on pressing gas into the store.`, related: [{ span: c.at(), message: 'runs on' }] });
        }
        for (const b of buttons) {
            const lost = v.all('fan').filter(f => extracts(f) && v.controls.stoppers(f.name).has(b.name));
            for (const f of lost) tell({ at: f.at(f.said('stopped-by') ? 'stopped-by' : 'needs'), message: `${b.name} stops ${f.name} as well: gas that is in the room then stays there.`, related: [{ span: b.at(), message: 'the stop' }] });
            for (const name of b.names('leaves-on')) {
                if (lost.some(f => f.name === name) || !v.controls.stoppers(name).has(b.name)) continue;
                tell({ at: b.at('leaves-on'), message: `${b.name} is said to leave ${name} on, but ${name} hangs on what it stops.`, related: [{ span: v.other(name)?.at() ?? b.at(), message: 'hangs on it' }] });
            }
        }
    },
});
