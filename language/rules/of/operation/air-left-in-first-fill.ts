import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';
import { stores } from '../../place.js';

export default defineRule({
    name: 'air-left-in-first-fill',
    family: 'operation',
    severity: 'error',
    summary: 'Nothing shows that the air was driven out before hydrogen was kept.',
    why: 'The first filling over air passes through every mixture that explodes; in a cylinder it stays inside.',
    source: 'rich limit of hydrogen in air 75 %, so about 5 % oxygen: handbooks; 1 % wanted: common practice, no source',
    guardsLife: true,
    from: 'built',
    on: 'rig',
    check(v, tell) {
        const line = new Set(v.paths.on('hydrogen'));
        const kept = stores(v).filter(s => line.has(s.name));
        if (!v.the('stack') || !kept.length) return;
        const routine = v.the('routine');
        const planned = routine?.rows('steps').some(r => /purge|roll.*flat|collapse/i.test(r.get('')?.text ?? '')) ?? false;
        const purges = v.all('purge');
        for (const store of kept) {
            const done = purges.find(p => p.names('covers').includes(store.name) || p.rows('covers').some(r => [...r.values()].some(f => f.text === 'section' && f.names?.includes(store.name))));
            const left = done?.maybe('oxygen-left');
            if (done && left !== undefined && left > 0.01) tell({ at: done.at('oxygen-left'), severity: left > 0.04 ? 'error' : 'warning', message: `${show(left, '%')} oxygen was left in ${store.name}; 1 % is wanted before hydrogen, about 5 % can burn inside.` });
            else if (!done && (store.kind === 'cylinder' || !planned)) {
                const first = store.kind === 'cylinder' ? store.maybeQ('first-fill-oxygen') : NaN;
                tell({ at: store.at(), severity: planned ? 'warning' : 'error', message: `No purge of ${store.name} is on record${first === first ? `: filled over air it can burn inside until it stands at ${show(first, 'bar')}` : ': filled over air it holds what can explode'}.` });
            }
        }
    },
});
