/** Every point at which something acts, by what it senses; then all pressures. */
import { measures } from '../../../units/dimension.js';
import { show } from '../../../units/format.js';
import { showBounds } from '../../../reference/values.js';
import { allPlots, figureOf, pictureOf } from '../../plots/index.js';
import { isSoft } from '../../plots/ladder.js';
import { pressurePoints, sensedPoints, type SetPoint } from '../../plots/set-points.js';
import { printed } from '../../palette.js';
import { defineSection, heading, table, type Asked } from '../define.js';
import type { Block, Row } from '../page.js';

export default defineSection({
    name: 'set-points', title: 'Set points in order', order: 90, lead: 'What acts at which value, the highest first: each must lie clear of the next, or one acts in the place of another.',
    make: a => {
        const points = sensedPoints(a.workings).filter(p => !a.hidden.has(p.part));
        const sensed = [...new Set(points.map(p => p.senses!))];
        const rows = sensed.flatMap((of): Row[] => [{ group: of.replace('.', ': ').replaceAll('-', ' ') }, ...points.filter(p => p.senses === of).sort((p, q) => q.at - p.at).map(p => rowOf(a, p))]);
        return [...table(['device', 'acts', 'what it drives'], rows), ...pressures(a)];
    },
});
function rowOf(a: Asked, p: SetPoint): Row {
    const drives = a.workings.controls.listeners(p.part).filter(n => !a.hidden.has(n));
    return [p.part, `${p.says} ${told(p, unitOf(a, p))}`, drives.join(', ') || 'nothing'];
}
const told = ({ at, bounds }: SetPoint, unit: string) => `${show(at, unit, 4)} ${bounds ? showBounds({ value: at, low: bounds[0], high: bounds[1] }, unit) : ''}`.trim();
/** As the text writes it. */
function unitOf({ workings }: Asked, p: SetPoint): string {
    const view = workings.viewOf(p.part)!;
    for (const key of ['makes', 'breaks', 'alarm', 'resets', 'trips'] as const) {
        const amount = p.says.startsWith(key === 'alarm' ? 'warns' : key) ? view.given(key).facts.get('value')?.amount : undefined;
        if (amount) return amount.unit?.text ?? measures.number.units[0];
    }
    return '';
}
/** All pressures of the rig; the picture only where nothing of it is left out. */
function pressures(a: Asked): Block[] {
    const rows = pressurePoints(a.workings).filter(p => !a.hidden.has(p.part)).reverse().map((p): Row => [p.part, p.says, told(p, isSoft(p) ? 'kPa' : 'bar')]);
    if (!rows.length) return [];
    const plot = a.hidden.size ? undefined : allPlots.find(p => p.name === 'pressures');
    const figure = plot && figureOf(plot, a.analysis);
    return [
        heading('All pressures, above that of the air outside'), ...table(['part', 'what lies there', 'pressure'], rows, [2]),
        ...(plot && typeof figure === 'object' ? [{ is: 'picture', svg: pictureOf(plot, figure, printed, 'report-pressures'), told: `${plot.title}. ${figure.says}` } as const] : []),
    ];
}
