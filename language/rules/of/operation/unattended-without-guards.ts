import { defineRule } from '../../define.js';
import { isIndoors, runsAlone } from '../../place.js';
import { missing } from '../../stage.js';

export default defineRule({
    name: 'unattended-without-guards',
    family: 'operation',
    severity: 'warning',
    summary: 'The rig runs alone without the guards that a person would be.',
    why: 'Faults grow in hours: a level falls, a stack warms, a bag fills, and nobody is there.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'routine',
    check(v, tell) {
        const stack = v.the('stack');
        if (!stack || !runsAlone(v)) return;
        const stops = v.controls.stackStoppers();
        const guarded = (quantity: string, side: 'above' | 'below') => v.controls.limits(stops, quantity, side).length > 0;
        const lacking: string[] = [];
        for (const column of v.all('column')) if (!guarded(`${column.name}.level`, 'below')) lacking.push(`a low-level trip on ${column.name}`);
        if (!v.all('column').length) lacking.push('a low-level trip');
        if (!guarded(`${stack.name}.temperature`, 'above')) lacking.push('a temperature trip on the stack');
        for (const bag of [...v.all('bag'), ...v.all('gasometer')]) if (!guarded(`${bag.name}.volume`, 'above') && !guarded(`${bag.name}.pressure`, 'above')) lacking.push(`something that ends the filling of ${bag.name}`);
        if (isIndoors(v) === true && !v.all('detector').some(d => stops.has(d.name))) lacking.push('a gas detector that stops it');
        if (!lacking.length) return;
        tell({ at: v.at('attended'), severity: missing(tell, 'warning'), message: `It runs alone without ${lacking.slice(0, 3).join(', ')}${lacking.length > 3 ? ` and ${lacking.length - 3} more` : ''}.` });
    },
});
