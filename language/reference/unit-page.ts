/** A unit in words: what it measures, what it is in others, how pressures and gas volumes are meant. */
import { measures, type Measure } from '../units/dimension.js';
import { digits } from '../units/format.js';
import { fromSi, toSi, unitBefore, unitOf, type Unit } from '../units/unit.js';

const FIGURES = 4;
const MOST = 6;

/** Page about a unit, or undefined if the text is none. */
export function unitPage(text: string): string | undefined {
    const gauge = unitBefore(text);
    if (gauge) return gaugePage(text, gauge);
    const unit = unitOf(text);
    if (!unit) return undefined;
    const all = Object.values(measures).filter(m => m.dimension === unit.dimension);
    const own = all.filter(m => m.units.includes(text) || m.units.includes(unit.name));
    const meant = own.length ? own : all;
    const says = [...new Set(meant.map(m => m.says))];
    const lines = [
        `# ${text}`,
        `${capital(unit.name)}${says.length ? `: ${says.slice(0, 3).join(', or ')}` : ''}.`,
        unit.offset ? `0 ${text} is ${digits(unit.offset, 5)} K.` : conversions(text, unit, meant),
        remark(unit, text),
    ];
    return lines.filter(Boolean).join('\n\n');
}
function conversions(text: string, unit: Unit, meant: readonly Measure[]): string {
    const others = [...new Set(meant.flatMap(m => m.units))].filter(u => u && u !== text);
    const same = others.map(u => unitOf(u)).filter((u): u is Unit => u?.dimension === unit.dimension && !u.offset && !u.currency === !unit.currency);
    if (!same.length || unit.currency) return unit.currency ? `Amounts in ${unit.currency} are not turned into another currency.` : '';
    return `1 ${text} = ${same.slice(0, MOST).map(u => `${digits(fromSi(toSi(1, unit), u), FIGURES)} ${u.text}`).join(' = ')}.`;
}
function remark(unit: Unit, text: string): string {
    if (unit.mark) return unit.mark === 'gauge' ? 'Counted from the air outside.' : 'Counted from vacuum.';
    if (unit.dimension === measures.pressure.dimension && measures.pressure.units.includes(text)) {
        return `A pressure in ${text} is meant above the air outside. Add \`abs\` where it counts from vacuum: \`2 ${text} abs\`.`;
    }
    if (/^(m?NL|Nl|N?m3|Nm³|sL|sm3|L|l)(\/|$)/.test(text)) {
        return 'NL is a normal litre: dry gas at 0 °C and 101.325 kPa, an amount. L of gas is a volume, at 20 °C and the air outside unless said otherwise.';
    }
    return '';
}
function gaugePage(text: string, unit: (n: number) => Unit): string {
    const rows = [22, 20, 18, 16, 14, 12, 10, 8, 6, 4, 2].map(n => `| ${text} ${n} | ${digits(unit(n).factor * n * 1e6, 3)} mm2 |`);
    return [`# ${text}`, `${capital(unit(10).name)}, of the copper. The number stands behind it, and a larger number is a thinner wire (ASTM B258).`, ['| gauge | area |', '|---|---|', ...rows].join('\n')].join('\n\n');
}
function capital(text: string): string {
    return text[0].toUpperCase() + text.slice(1);
}
