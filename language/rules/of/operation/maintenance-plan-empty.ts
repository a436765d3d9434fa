import { defineRule } from '../../define.js';
import { stores } from '../../place.js';
import { trialOf } from '../../test-intervals.js';

export default defineRule({
    name: 'maintenance-plan-empty',
    family: 'operation',
    severity: 'hint',
    summary: 'Nothing says when guards and parts that age are looked after.',
    why: 'A guard ages unseen: seals dry, contacts stick, sensor cells die, relief valves seize.',
    source: 'common practice, no source',
    from: 'built',
    on: 'routine',
    check(v, tell) {
        if (!v.the('stack') || (v.said('plan') && v.says('plan') !== 'none')) return;
        const aging: string[] = [];
        if (v.all('seal').length + v.all('bubbler').length) aging.push(`seals and bubblers each ${trialOf('seal').each}`);
        if (v.all('trip').length) aging.push(`trips each ${trialOf('trip').each}`);
        if (v.all('analyser').length + v.all('detector').length) aging.push(`sensors each ${trialOf('detector').each}`);
        if (v.all('relief-valve').length) aging.push(`relief valves each ${trialOf('relief-valve').each}`);
        if (aging.length < 2 || !stores(v).length) return;
        tell({ at: v.part.implied ? v.the('stack')!.at() : v.at(v.part.entries.has('plan') ? 'plan' : undefined), message: `What ages here is in no plan. Usual are: ${aging.join(', ')}, lye each year.` });
    },
});
