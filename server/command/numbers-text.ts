/** The numbers of a rig as lines of a terminal: by part, points under each other, units and bounds beside them. */
import type { Result, Workings } from '../../language/quantities/workings.js';
import { assumptionRows, isKeyNumber, resultsOf } from '../../language/reference/quantities.js';
import { showResult, showSpread } from '../../language/reference/values.js';
import { nearPlace, nearText, type Near } from '../../language/rules/near.js';
import type { Styles } from './style.js';
import { caution, many } from './words.js';

const NAME_COLUMN = 28;
const MOST_TO_SAY = 3;

const isKnown = (r: Result) => r.value === r.value;

/** @param all every quantity, the unknown ones too */
export function numbersText(workings: Workings, near: readonly Near[], all: boolean, s: Styles): string {
    const { rig } = workings;
    const results = resultsOf(workings);
    const shown = results.filter(r => all || (isKnown(r) && isKeyNumber(r)));
    const rows = shown.map(result => {
        const [number, ...unit] = isKnown(result) ? showResult(result).split(' ') : ['-'];
        const [whole, fraction] = number.split(/(?=\.)/);
        return { result, whole, fraction: fraction ?? '', unit: unit.join(' ') };
    });
    const wholes = Math.max(4, ...rows.map(r => r.whole.length));
    const fractions = Math.max(0, ...rows.map(r => r.fraction.length));
    const units = Math.max(0, ...rows.map(r => r.unit.length));
    const out = [s.strong(rig.title || 'A rig without a title') + s.quiet(`  ${rig.stage}${rig.stageSaid ? '' : ', not said'}`)];
    let part = '';
    for (const { result, whole, fraction, unit } of rows) {
        if (result.part.name !== part) {
            part = result.part.name;
            out.push('', s.strong(part) + s.quiet(part === result.part.kindWord ? '' : `  ${result.part.kindWord}`));
        }
        const beside = isKnown(result) ? showSpread(result) : `needs ${result.missing.slice(0, MOST_TO_SAY).join(', ') || 'more than is said'}`;
        const number = whole.padStart(wholes) + fraction.padEnd(fractions);
        out.push(`  ${result.quantity.name.padEnd(NAME_COLUMN)}${number}  ${s.quiet(`${unit.padEnd(units)}  ${beside}`.trimEnd())}`.trimEnd());
    }
    if (!rows.length) out.push('', 'No number is known yet.');
    const unknown = toSay(results);
    if (unknown && !all) out.push('', s.quiet(unknown));
    if (near.length) {
        const places = Math.max(...near.map(n => nearPlace(n).length)) + 2;
        const rules = Math.max(...near.map(n => n.rule.length)) + 2;
        out.push('', s.strong('Near a limit'));
        for (const n of near) out.push(`  ${nearPlace(n).padEnd(places)}${s.quiet(n.rule.padEnd(rules))}${nearText(n)}`);
    }
    const assumed = assumptionRows(workings);
    if (assumed.length) {
        const width = Math.max(...assumed.map(a => a.name.length)) + 2;
        const values = Math.max(...assumed.map(a => a.value.length)) + 2;
        out.push('', s.strong('Assumed, since the text does not say'));
        for (const a of assumed) out.push(`  ${a.name.padEnd(width)}${a.value.padEnd(values)}${s.quiet(a.because)}`);
    }
    out.push('', s.quiet('NL, and m3 of a price or an energy: gas at 0 °C and 101.325 kPa, dry.'), s.quiet(caution), '');
    return out.join('\n');
}
/** What would have to be said for most of the unknown numbers. */
function toSay(results: readonly Result[]): string | undefined {
    const unknown = results.filter(r => !isKnown(r));
    const waits = new Map<string, number>();
    for (const r of unknown) for (const m of r.missing) waits.set(m, (waits.get(m) ?? 0) + 1);
    const first = [...waits].sort((a, b) => b[1] - a[1]).slice(0, MOST_TO_SAY).map(([name]) => name);
    return unknown.length && first.length ? `${many(unknown.length, 'more number')} would need what is not said: ${first.join(', ')} first. --all lists them.` : undefined;
}
