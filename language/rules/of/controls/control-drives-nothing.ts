import { addToList } from '../../path-fixes.js';
import { defineRule } from '../../define.js';
import { defined, setValue } from '../../fixes.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'control-drives-nothing',
    family: 'controls',
    severity: 'warning',
    summary: 'A switch, trip or contactor is described and drives nothing, or the compressor is run by nothing.',
    why: 'A guard that is drawn and not wired protects nothing, and everybody believes that it does.',
    source: 'reading of the text',
    guardsLife: true,
    on: ['switch', 'trip', 'analyser', 'detector', 'timer', 'relay', 'contactor', 'solid-state-relay', 'button', 'compressor'],
    check(v, tell) {
        if (v.kind === 'compressor') {
            if (!v.names('needs').length && !v.names('stopped-by').length && v.all('switch').length + v.all('contactor').length > 0) {
                const contactor = v.all('contactor').find(c => !v.controls.listeners(c.name).length);
                tell({ at: v.at(), severity: missing(tell, 'warning'), message: `${v.name} needs nothing and is stopped by nothing: once plugged in it runs on.`, fixes: defined(contactor && setValue(v, 'needs', contactor.name, `Let it need ${contactor.name}`)) });
            }
            return;
        }
        if (v.controls.listeners(v.name).length || v.all('controller').some(c => c.names('decides').includes(v.name))) return;
        const guards = ['trip', 'analyser', 'detector'];
        const source = v.controls.sources().at(-1);
        const main = ['trip', 'analyser', 'detector'].includes(v.kind) ? v.all('contactor').find(c => c.names('latched-by').length) : undefined;
        tell({
            at: v.at(), severity: missing(tell, 'warning'), message: `${v.name} ${v.kind === 'button' ? 'starts' : ['trip', 'analyser', 'detector', 'switch'].includes(v.kind) ? 'stops' : 'drives'} nothing.`,
            // Without a contactor that stays dropped, the supply itself stops.
            fixes: defined(main ? addToList(main, 'stopped-by', v.name, `Let it drop ${main.name}`)
                : source && guards.includes(v.kind) ? addToList(source, 'stopped-by', v.name, `Let it stop ${source.name}`) : undefined),
        });
    },
});
