import { defineRule } from '../../define.js';

export default defineRule({
    name: 'no-lock-off-switch',
    family: 'wiring',
    severity: 'warning',
    summary: 'Nothing cuts the battery for work on the rig.',
    why: 'A battery has no plug to pull: the leads of the stack stay live while hands are in the lye.',
    source: 'means of isolation, IEC 60204-1, 5.3, from memory',
    from: 'built',
    on: 'battery',
    check(v, tell) {
        if (!v.the('stack')) return;
        const path = v.paths.on('current');
        const cut = v.all('isolator').some(i => path.includes(i.name) || i.names('cuts').includes(v.name) || v.all('battery').length === 1);
        if (!cut) {
            tell({
                at: v.at(),
                message: `Nothing cuts ${v.name} for service: the leads stay live while the stack is open. A main switch that can be ` +
                    'locked belongs there.',
            });
        }
    },
});
