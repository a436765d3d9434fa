import { digits, show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'numbers-contradict',
    family: 'the description',
    severity: 'error',
    summary: 'Numbers that say the same thing in two ways do not agree.',
    why: 'One of them is wrong, and what is worked out from the wrong one is wrong as well.',
    source: 'identities: power = voltage x current, area = width x height, volume = area x height; volume of a ball; Young-Laplace for pores',
    on: 'rig',
    check(v, tell) {
        const apart = (a: number, b: number, share: number) => Math.abs(a - b) > share * Math.max(Math.abs(a), Math.abs(b));
        for (const p of v.all('panels')) {
            const [count, series, parallel] = [p.maybe('count'), p.maybe('wiring.series'), p.maybe('wiring.parallel')];
            if (p.said('count') && series * parallel !== count && series * parallel > 0) {
                tell({
                    at: p.at('wiring'),
                    message: `${digits(series)} in series and ${digits(parallel)} in parallel are ${digits(series * parallel)} modules; ` +
                        `${digits(count)} are stated.`,
                    related: [{ span: p.at('count'), message: 'the count' }],
                });
            }
        }
        for (const t of v.all('transformer')) {
            if (v.the('rectifier')?.word('circuit') === 'centre-tap') continue;
            const product = t.maybe('secondary') * t.maybe('secondary-current');
            if (apart(product, t.maybe('power'), 0.1)) {
                tell({
                    at: t.at('power'),
                    message: `${show(t.maybe('secondary'), 'V')} at ${show(t.maybe('secondary-current'), 'A')} are ` +
                        `${show(product, 'VA')}; ${show(t.maybe('power'), 'VA')} is stated.`,
                    related: [{ span: t.at('secondary-current'), message: 'the current of the winding' }],
                });
            }
        }
        for (const t of v.all('tube')) {
            const size = t.sizes('size');
            const bore = size && size.length >= 2 ? size[0] - 2 * size[1] : NaN;
            if (t.said('bore') && apart(bore, t.maybe('bore'), 0.05)) {
                tell({
                    at: t.at('bore'),
                    message: `${t.name}: its size leaves a bore of ${show(bore, 'mm')}; ${show(t.maybe('bore'), 'mm')} is stated.`,
                    related: [{ span: t.at('size'), message: 'the size' }],
                });
            }
        }
        for (const b of v.all('balloon')) {
            const ball = b.maybeQ('ball-volume');
            // Less than a ball is a disc or a pillow; more than a ball no width can hold.
            if (b.said('volume') && b.maybe('volume') > 1.05 * ball) {
                tell({
                    at: b.at('volume'),
                    message: `A ball ${show(b.maybe('diameter'), 'm')} wide holds ${show(ball, 'L')}, and nothing of that width holds more; ${show(b.maybe('volume'), 'L')} is stated.`,
                    related: [{ span: b.at('diameter'), message: 'the width' }],
                });
            }
        }
        const site = v.the('site');
        if (site) {
            const sides = site.sizes('floor.size');
            const floor = sides ? sides[0] * sides[1] : site.maybe('floor');
            const most = floor * site.maybe('high-point');
            if (site.maybe('volume') > 1.05 * most) {
                tell({
                    at: site.at('volume'),
                    message: `A floor of ${show(floor, 'm2')} and ${show(site.maybe('high-point'), 'm')} to the highest point hold at ` +
                        `most ${show(most, 'm3')}; ${show(site.maybe('volume'), 'm3')} is stated.`,
                    related: [{ span: site.at('floor'), message: 'the floor' }],
                });
            }
        }
        for (const s of v.all('separator')) {
            const holds = s.maybeQ('pore-limit');
            if (s.maybe('bubble-pressure') > 1.5 * holds) {
                tell({
                    at: s.at('bubble-pressure'),
                    message: `A pore of ${show(s.maybe('largest-pore'), 'µm')} lets gas through at ${show(holds, 'kPa', 2)} at most; ` +
                        `${show(s.maybe('bubble-pressure'), 'kPa')} is stated. Is the pore the largest one, and was the test done ` +
                        'wet?',
                    related: [{ span: s.at('largest-pore'), message: 'the pore' }],
                });
            }
        }
        // Within one reading or claim, power = voltage x current.
        for (const r of [...v.all('reading'), ...v.all('claim')]) {
            for (const of of [...v.all('stack'), ...v.all('supply')]) {
                const said = (key: string) => {
                    const entry = r.part.entries.get(`${of.name}.${key}`);
                    return entry && tell.workings.amountOf(entry)?.si;
                };
                const [volts, amps, watts] = [said('voltage'), said('current'), said('power')];
                if (volts === undefined || amps === undefined || watts === undefined || !apart(volts * amps, watts, 0.07)) continue;
                tell({
                    at: r.part.entries.get(`${of.name}.power`)!.span,
                    message: `${show(volts, 'V')} x ${show(amps, 'A')} = ${show(volts * amps, 'W')}, but ${show(watts, 'W')} is ` +
                        `${r.kind === 'claim' ? 'claimed' : 'written down'}.`,
                });
            }
        }
    },
});
