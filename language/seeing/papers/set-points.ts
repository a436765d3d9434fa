/** Where switches and trips act, between which readings they pass, and how each is made to act without hydrogen. */
import type { View } from '../../quantities/view.js';
import { fromSi } from '../../units/unit.js';
import { digits, show } from '../../units/format.js';
import type { Fact } from '../../values/match.js';
import type { Bench } from './bench.js';

export interface SetPoint {
    readonly key: string;
    readonly side: string;
    readonly at: string;
    /** SI. */
    readonly low: number;
    readonly high: number;
    /** 'from 10.3 bar to 10.7 bar' */
    readonly passes: string;
    readonly by: string;
    readonly waits: string | undefined;
}
/** In the unit of the text. */
const inUnit = (fact: Fact, si: number, figures = 4) => {
    const unit = fact.amount?.unit;
    return unit ? `${digits(fromSi(si, unit), figures)} ${unit.text}` : digits(si, figures);
};
/** Every point at which a device acts, as its text tells it. */
export function setPointsOf(b: Bench, v: View): SetPoint[] {
    return ['alarm', 'trips', 'breaks', 'makes'].flatMap(key => {
        const value = b.fact(v, `${key}.value`);
        if (!value || value.number !== value.number) return [];
        const own = value.high > value.low;
        const share = v.maybe('tolerance', NaN);
        // A share of a temperature is one of its degrees Celsius, not of its kelvins: of those no share makes sense, so none is worked out.
        const temperature = value.amount?.unit?.text === '°C';
        const half = own ? 0 : temperature ? NaN : share * Math.abs(value.number);
        const [low, high] = own ? [value.low, value.high] : [value.number - half, value.number + half];
        const waits = b.told(v, `${key}.for`);
        return [{
            key, side: v.word(`${key}.side`) ?? '', at: inUnit(value, value.number), low, high,
            passes: low === low && high === high ? `${inUnit(value, low)} to ${inUnit(value, high)}` : '',
            by: own ? 'its own ±' : v.says('tolerance') === 'assumed' ? `± ${show(share, '%')}, not told` : `± ${show(share, '%')} as told`, waits,
        }];
    });
}
/** What to do so that a device acts, with no hydrogen in the rig: by what it senses. Common practice, no source. */
const ways: Readonly<Record<string, string>> = {
    volume: 'Fill with air by a pump, slowly, the lines to the stack shut; or move its float, lever or string by hand to the mark of that volume.',
    pressure: 'Nitrogen or a hand pump on its line, rising slowly, against a gauge that was compared with another; let down again for the way back.',
    temperature: 'Its sensor in a stirred bath beside a thermometer, warmed slowly; above 90 °C a dry block instead of water.',
    'discharge-temperature': 'Its sensor in a dry block or an oil bath beside a thermometer, warmed slowly.',
    level: 'Plain water in the vessel before any lye: let out or fill up slowly beside a scale; or move its float by hand to the mark.',
    flow: 'Cover the inlet bit by bit while it runs, beside a flow meter; then shut it off.',
    oxygen: 'Test gas of a known share in nitrogen at its inlet; in plain air it must show 20.9 % and act.',
    hydrogen: 'Bought test gas of a known share in air, below a quarter of what can burn, through its cap. Never a lighter, never gas of the rig.',
    current: 'A bench supply and a resistor in place of the stack, beside a meter.',
    voltage: 'A bench supply in place of the source, beside a meter.',
};
export function wayToAct(b: Bench, v: View): string {
    const sensed = (b.controls.sensed(v) ?? '').split('.');
    const [part, quantity] = sensed;
    if (quantity === 'temperature' && b.other(part)?.kind === 'burner') return 'Its sensor warmed by a small torch away from the rig, then left to cool, timed by a clock.';
    if (b.other(part)?.kind === 'cylinder' && quantity === 'pressure') return 'Nitrogen from a regulator or a hydraulic hand pump on its line with the cylinder shut off, rising slowly, against a gauge that was compared with another.';
    return ways[quantity] ?? 'Not told by what it senses: ask its maker how it is tested without gas.';
}
