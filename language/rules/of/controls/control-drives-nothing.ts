import { defineRule } from '../../define.js';

export default defineRule({
    name: 'control-drives-nothing',
    family: 'controls',
    severity: 'warning',
    summary: 'Nothing listens to this device.',
    why: 'It is bought, mounted and trusted, and does nothing.',
    source: 'topology',
    from: 'drawn',
    on: ['switch', 'trip', 'analyser', 'detector', 'timer', 'stop-button', 'button'],
    check(v, tell) {
        if (v.controls.listeners(v.name).length) return;
        if (v.all('controller').some(c => c.names('decides').length)) return;
        if (v.said('alarm') && !v.said('trips')) return;
        tell({ at: v.at(), message: `Nothing listens to ${v.name}.` });
    },
});
