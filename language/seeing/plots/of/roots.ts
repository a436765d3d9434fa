import { unitOfResult } from '../../../reference/values.js';
import { digits, show } from '../../../units/format.js';
import { fromSi, unitOf } from '../../../units/unit.js';
import { nearest, offering } from '../../../values/nearest.js';
import { quantityOf } from '../../../quantities/index.js';
import { lacking, six, told } from '../ask.js';
import { definePlot } from '../define.js';
import type { Bar } from '../figure.js';

/** Roots that are told; the rest is summed up. */
const MOST = 12;
const USUAL = 'hydrogen-rate';
const sorts = { stated: 'as stated', assumed: 'assumed', law: 'left open by a law' } as const;

export default definePlot({
    name: 'roots', order: 10, title: 'What matters most',
    meaning: 'How far each thing that is known only within bounds moves one number of the rig, the largest first.',
    needs: 'the name of a number (--of stack.volts-per-cell; the hydrogen rate if left out), and enough told that it is known',
    show({ workings, stack, of }) {
        const name = of ?? (stack ? `${stack.name}.${USUAL}` : '');
        const dot = name.indexOf('.');
        const part = workings.viewOf(name.slice(0, Math.max(0, dot)));
        if (!part) return name ? offering(`There is no part ${dot < 0 ? name : name.slice(0, dot)}`, nearest(dot < 0 ? name : name.slice(0, dot), workings.rig.parts.keys())) : 'No stack is described; say of which number by --of.';
        const result = part.result(name.slice(dot + 1));
        if (!result) return offering(`${part.name} has no number ${name.slice(dot + 1)}`, nearest(name.slice(dot + 1), [...quantityOf(part.kind).keys()]));
        if (result.value !== result.value) return lacking(part, name.slice(dot + 1));
        const { shares, low, high } = result.spread;
        if (!shares.length) return `Nothing that ${name} rests on is told, assumed or known within bounds.`;
        const unit = unitOfResult(result);
        const u = unitOf(unit);
        const at = (si: number) => (u ? fromSi(si, u) : si);
        const ends = (s: typeof shares[number]) => [s.atLow, s.atHigh].map(x => (x === x ? x : 0));
        const bars: Bar[] = shares.slice(0, MOST).map(s => ({
            name: s.root.label, note: [s.root.told, sorts[s.root.sort]].filter(Boolean).join(', '), from: at(result.value + Math.min(0, ...ends(s))), to: at(result.value + Math.max(0, ...ends(s))),
            told: s.atLow === s.atLow && s.atHigh === s.atHigh ? `${digits(100 * s.part, 2)} %` : 'no number at one end', sort: 'swing', open: s.root.sort === 'assumed',
        }));
        bars.push({ name: 'all of it together', note: 'about 95 % of all cases', from: at(low), to: at(high), told: told(part, name.slice(dot + 1)), sort: 'sum' });
        return {
            shape: { is: 'bars', x: { name, unit }, bars, uprights: [{ label: show(result.value, unit), x: at(result.value) }] },
            says: `${name} is ${told(part, name.slice(dot + 1))}. Most of it, ${digits(100 * shares[0].part, 2)} %, comes from ${shares[0].root.label}: to know that better narrows it most.`,
            notes: [...(shares.length > MOST ? [`${shares.length - MOST} smaller ones are left out.`] : []), 'Open bars are assumptions: saying the number in the text narrows or removes them.'],
            table: {
                columns: [{ name: 'what', unit: '' }, { name: 'bounds', unit: '' }, { name: 'sort', unit: '' }, { name: 'at its lower end', unit }, { name: 'at its upper end', unit }, { name: 'share of the ±', unit: '%' }],
                rows: [...shares.map(s => [s.root.label, s.root.told, sorts[s.root.sort], six(at(result.value + s.atLow)), six(at(result.value + s.atHigh)), six(100 * s.part)]), ['all of it together', '', '', six(at(low)), six(at(high)), undefined]],
            },
        };
    },
});
