/** Cards for what is tried before hydrogen: tightness, separators, reliefs, every switch and trip, driving the air out. */
import { gasLost } from '../../../physics/leak-test.js';
import { ROOM } from '../../../quantities/surroundings.js';
import { guardedBy } from '../../../rules/relief.js';
import { digits, duration, show } from '../../../units/format.js';
import type { View } from '../../../quantities/view.js';
import type { Bench } from '../bench.js';
import { blank, card, heading, list, pairs, quiet, signed, table, tick, words } from '../page.js';
import { definePaper } from '../paper.js';
import { separatorPress } from '../press.js';
import { setPointsOf, wayToAct } from '../set-points.js';
import { fillings, leftAfter, spacesOf, VOLUMES, WANTED_OXYGEN } from '../spaces.js';
import { together, type Child, type Markup } from '../../svg.js';

/** Share of what the stack makes that a tightness test must be able to show: as the rule leak-test-too-coarse. */
const SHOWN = 0.01;
/** Share of the test pressure that may be lost: on a water gauge, and on a dial of the high side. Common practice, no source. */
const MAY_FALL = { low: 0.1, high: 0.02 };
/** Share of its set pressure by which a relief valve may open beside it: ASME BPVC VIII-1, above 5 bar, from memory. */
const RELIEF_TOLERANCE = 0.03;
/** s, shortest holding. Common practice, no source. */
const SHORTEST = 1800;
/** Pa, least test of the low side, and by how much more than the work's head: as the rule leak-test-missing. */
const LEAST = 500;
const OVER_WORK = 1.5;
/** K that nobody writes down. */
const DRIFT = 1;
/** L/min in m³/s, of nitrogen, for the table of minutes. */
const FLOWS = [2, 5, 10];
const LITRE_PER_MINUTE = 1e-3 / 60;

export interface LeakTest {
    /** Pa */
    readonly pressure: number;
    readonly mayFall: number;
    /** m³ */
    readonly space: number;
    /** s */
    readonly lasts: number;
    /** m³/s at the air's pressure: what could still leak and pass. */
    readonly hides: number;
    /** Pa for each kelvin. */
    readonly perKelvin: number;
}
/** Numbers of a tightness test of a space; NaN where the rig does not tell what they need. */
export function leakTest(side: 'low' | 'high', pressure: number, space: number, made: number, air: number): LeakTest {
    const mayFall = MAY_FALL[side] * pressure;
    // Long enough that the fall allowed and one kelvin together hide no more than the share that must show.
    const needed = gasLost(space, pressure, mayFall, DRIFT, ROOM, 1, air) / (SHOWN * made);
    const lasts = Math.max(SHORTEST, needed === needed ? Math.ceil(needed / 600) * 600 : SHORTEST);
    return { pressure, mayFall, space, lasts, hides: gasLost(space, pressure, mayFall, DRIFT, ROOM, lasts, air), perKelvin: (pressure + air) / ROOM };
}
const sum = (of: readonly number[]) => of.filter(n => n === n).reduce((a, n) => a + n, 0);
const litres = (si: number) => (si > 0 ? show(si, 'L') : blank());

function tightness(b: Bench, title: string, t: LeakTest, covers: readonly string[], unknown: readonly string[], unit: string, mind: readonly (Child | undefined)[], work: Child): Markup {
    return card(title,
        pairs([
            ['covers', b.names(covers)],
            ['pressed to', [b.number(t.pressure, unit), unit === 'bar' ? ' of nitrogen; works at ' : ' of nitrogen or air; works at ', work]],
            ['gas space told', [litres(t.space), unknown.length ? [`; not told: ${unknown.join(', ')}`] : ''].flat()],
            ['held', [duration(t.lasts), ', after ten minutes for the warmth to even out']],
            ['passes', t.mayFall > 0 ? [`with a fall of ${show(t.mayFall, unit, 2)} at most, no bubbles of soap at any joint`] : ['with no fall that the gauge shows, and no bubbles of soap: ', blank()]],
            ['that would hide', t.hides > 0 ? `${show(t.hides, 'L/h', 2)} at most, 1 K of drift counted` : blank()],
            ['warmth', t.perKelvin > 0 ? `each kelvin by itself moves the gauge by ${show(t.perKelvin, unit, 2)}: read the temperature of the rig at both ends, and count that off` : ''],
        ]),
        list(mind.filter(m => m !== undefined)),
        words('At the start ', blank(), ' at ', blank(), ' °C; at the end ', blank(), ' at ', blank(), ' °C; fell ', blank(), ' ', tick('passed'), tick('failed')));
}
function leakCards(b: Bench): Markup[] {
    const air = b.analysis.workings.airPressure;
    const stack = b.the('stack');
    const made = b.q(stack, 'hydrogen-rate-room');
    const head = b.q(stack, 'hydrogen-head');
    const low = [...spacesOf(b, 'hydrogen'), ...spacesOf(b, 'oxygen')];
    const compressor = b.parts('compressor').find(c => b.paths.on('hydrogen').includes(c.name));
    const behind = new Set(compressor ? b.paths.after(compressor.name, 'hydrogen').filter(n => !b.paths.before(compressor.name, 'hydrogen').includes(n)) : []);
    const isHigh = (name: string) => behind.has(name) || name === compressor?.name;
    const soft = low.filter(s => !isHigh(s.name) && !['bag', 'gasometer'].includes(b.other(s.name)!.kind));
    const lids = b.parts('column').map(c => b.num(c, 'lid.rating')).filter(n => n === n);
    const cards: Markup[] = [];
    if (stack) {
        const pressure = Math.max(OVER_WORK * head, LEAST);
        const cap = Math.min(...lids);
        cards.push(tightness(b, 'Tightness, low side', leakTest('low', head === head ? pressure : LEAST, sum(soft.map(s => s.volume)) || NaN, made, air), ['stack', ...soft.map(s => s.name)], soft.filter(s => !(s.volume > 0)).map(s => s.name), 'kPa', [
            'Both gas sides linked by a hose, so that nothing presses on the separators. Bag, seals, vents and burner blanked off.',
            lids.length ? `The weakest lid told holds ${show(cap, 'kPa')}${pressure > cap ? ': less than this test. Blank it or do not test so.' : '.'}` : 'What the lids of the columns hold is not told: ask before you press on them.',
            'A water gauge (U of clear hose) shows such pressures; a dial does not.',
        ], b.predicted(stack, 'hydrogen-head')));
    }
    const cylinder = b.parts('cylinder').find(c => behind.has(c.name));
    if (cylinder) {
        const cut = b.q(cylinder, 'cut-off');
        const high = low.filter(s => behind.has(s.name));
        cards.push(tightness(b, 'Tightness, high side', leakTest('high', cut, sum(high.map(s => s.volume)) || NaN, made, air), high.map(s => s.name), high.filter(s => !(s.volume > 0)).map(s => s.name), 'bar', [
            'Nitrogen only, by a regulator, in steps; nobody in front of a fitting while it rises. Soap at each step.',
            `Not above the rating of any part${b.told(cylinder, 'rating') ? ` (${cylinder.name} ${b.told(cylinder, 'rating')})` : ''}. A proof test above the working pressure is done with water by a test body.`,
        ], b.predicted(cylinder, 'cut-off')));
    }
    return cards;
}
function separatorCard(b: Bench): Markup | undefined {
    const separator = b.the('separator');
    const stack = b.the('stack');
    if (!separator || !stack) return undefined;
    const { least, most: top, by, weakest } = separatorPress(b, stack);
    return card('Separators, wet, on one side alone',
        pairs([
            ['pressed to', [b.number(least, 'kPa'), ` or more (${by})`, Number.isFinite(top) ? `; not above ${show(top, 'kPa')} (${weakest})` : ['; at most: ', blank()]].flat()],
            ['held', '10 min, hydrogen side pressed and oxygen side open to a hose under water; then the other way round'],
            ['passes', 'no bubble from the open side after the first minute, and the gauge does not fall'],
        ]),
        list([
            'Only wet sheets can be tested: filled with water or lye, an hour before. Dry pores let gas through wherever they are.',
            least > top ? 'The least is above the most here: this test would prove nothing or do harm. Settle that first.' : undefined,
        ]),
        words('Hydrogen side at ', blank(), ' bubbles ', blank(), ' fell ', blank(), ' ', tick('passed'), ' Oxygen side at ', blank(), ' bubbles ', blank(), ' fell ', blank(), ' ', tick('passed')));
}
/** Between which pressures a relief valve must open, Pa: above where the store is cut off and the last trip on it acts, not above what it guards may bear. */
export function reliefLimits(b: Bench, relief: View): { readonly above: number; readonly notAbove: number; readonly weakest: string | undefined } {
    const guarded = guardedBy(relief);
    let above = NaN;
    let notAbove = NaN;
    let weakest: string | undefined;
    for (const v of guarded) {
        const cut = v.kind === 'cylinder' ? b.q(v, 'cut-off') : v.kind === 'regulator' ? b.num(v, 'set') : NaN;
        // A trip over the cut-off acts before it.
        const trips = b.controls.sensing(`${v.name}.pressure`).flatMap(d => setPointsOf(b, d)).filter(p => p.side === 'above').map(p => (p.high === p.high ? p.high : 0));
        const last = Math.max(cut, ...trips);
        if (!(above >= last) && last === last) above = last;
        const rating = b.num(v, 'rating');
        if (rating > 0 && !(notAbove <= rating)) [notAbove, weakest] = [rating, v.name];
    }
    // Behind a regulator its set pressure is what stands in the work.
    if (above !== above) for (const l of b.paths.to(relief.name, 'hydrogen')) for (const n of b.paths.before(l.from.name, 'hydrogen')) if (b.other(n)?.kind === 'regulator') {
        const set = b.num(b.other(n), 'set');
        if (!(above >= set)) above = set;
    }
    return { above, notAbove, weakest };
}
function reliefCards(b: Bench): Markup[] {
    const cards = b.parts('relief-valve').map(v => {
        const { above, notAbove, weakest } = reliefLimits(b, v);
        const set = b.num(v, 'set');
        return card(`Relief valve ${v.name}`,
            pairs([
                ['set', b.ask(v, 'set')],
                ['passes', ['opens above ', b.number(above, 'bar'), ' (nothing below that may open it), at ', b.number(notAbove, 'bar'), weakest ? ` or less (${weakest})` : ' or less (the weakest part that it guards)', set > 0 ? `, within 3 % of its set pressure: ${show(set * (1 - RELIEF_TOLERANCE), 'bar', 4)} to ${show(set * (1 + RELIEF_TOLERANCE), 'bar', 4)}` : '', '; shuts tight again']],
                ['last test told', b.ask(v, 'tested')],
            ]),
            list(['With nitrogen, on a test stand, by who may do it; the seal put back on. Never by filling the store with hydrogen until it blows.']),
            words('Opened at ', blank(), ' shut at ', blank(), ' tested by ', blank(), ' ', tick('passed'), tick('failed')));
    });
    for (const v of b.parts('seal')) {
        const works = v.result('working-pressure');
        const bag = b.parts('bag').find(x => b.paths.before(v.name, 'hydrogen').includes(x.name));
        const bears = b.num(bag, 'rating');
        cards.push(card(`Seal ${v.name}`,
            pairs([
                ['filled to', [b.ask(v, 'depth'), b.told(v, 'fluid') ? ` of ${b.written(v, 'fluid')}` : '']],
                ['opens at', b.predicted(v, 'opens-at')],
                ['passes', ['opens within 10 % of that, above ', works && works.value === works.value ? b.predicted(v, 'working-pressure') : blank(), ' (what stands before it in the work)', bears > 0 ? ` and below ${show(bears, 'kPa')} (${bag!.name})` : '', '; liquid comes back afterwards']],
            ]),
            words('Air or nitrogen by a hand pump. Opened at ', blank(), ' liquid back to ', blank(), ' ', tick('passed'), tick('failed'))));
    }
    return cards;
}
function deviceCard(b: Bench, v: View): Markup {
    const points = setPointsOf(b, v);
    const stops = b.controls.stops(v.name).map(n => b.other(n)).filter((o): o is View => !!o).map(o => o.name);
    const heard = b.controls.listeners(v.name).filter(n => b.other(n) && !stops.includes(n));
    const broken = (['if-wire-breaks', 'if-detached', 'if-unpowered'] as const).filter(key => b.told(v, key)).map(key => together(`${{ 'if-wire-breaks': 'wire pulled off', 'if-detached': 'float or lever off', 'if-unpowered': 'its supply off' }[key]}: ${b.told(v, key)} `, tick('seen')));
    return card(`${v.name}: ${v.kind} on ${b.controls.sensed(v) ?? '______'}`,
        table(['acts', 'at', 'passes from … to', 'read 1', 'read 2', 'read 3'], points.length
            ? points.map(p => [`${p.key}${p.waits ? `, after ${p.waits}` : ''}`, `${p.side} ${p.at}`, p.passes ? [p.passes, p.by === 'its own ±' ? '' : ` (${p.by})`] : ['± not told: ', blank()], blank(), blank(), blank()])
            : [['', blank(), blank(), blank(), blank(), blank()]]),
        words('How: ', wayToAct(b, v)),
        words('Then must stop: ', stops.length ? b.names(stops) : 'nothing by itself', heard.length ? `; heard by ${heard.slice(0, 6).join(', ')}` : '', '. ', tick('seen'), ...broken,
            b.told(v, 'resets') === undefined && b.written(v, 'resets') ? together(`comes back ${b.written(v, 'resets')} `, tick('seen')) : ''));
}
function purgeTable(b: Bench): Markup {
    const spaces = spacesOf(b, 'hydrogen').filter(s => b.other(s.name)!.kind !== 'cylinder');
    const rate = b.q(b.the('stack'), 'hydrogen-rate-room');
    return table(['space', 'volume', `${VOLUMES} volumes`, ...FLOWS.map(f => `min at ${f} L/min`), 'by own gas, let out', 'oxygen read'], spaces.map(s => {
        const whole = VOLUMES * s.volume;
        return [`${s.name}${s.by ? ` (${s.by})` : ''}`, litres(s.volume), litres(whole), ...FLOWS.map(f => (whole > 0 ? digits(whole / (f * LITRE_PER_MINUTE) / 60, 2) : blank())), whole > 0 && rate > 0 ? duration(whole / rate) : blank(), blank()];
    }));
}

export default definePaper({
    name: 'checks', place: 60, title: 'Test cards',
    purpose: 'What is tried before hydrogen is made, how, and between which readings it passes.',
    needs: 'stack, column, separator, seal, relief-valve, switch, trip, analyser, detector with their set points',
    cautions: () => [
        'All of this without hydrogen: air, nitrogen, water. What is not tested with those is found by hydrogen.',
        'Nitrogen in a small room takes the breath away without a warning: let it out of doors.',
        'A card that fails ends the work. Mend, then the whole card again. The text of the rig gets a test with its day.',
    ],
    make: b => {
        const devices = b.parts('switch', 'trip', 'analyser', 'detector');
        const reliefs = reliefCards(b);
        const cylinders = b.parts('cylinder').filter(c => b.paths.on('hydrogen').includes(c.name));
        const air = b.analysis.workings.airPressure;
        const leaks = leakCards(b);
        const separator = separatorCard(b);
        return [
            heading('Tightness'), ...(leaks.length ? leaks : [words('The text has no stack and no store.')]),
            separator && heading('Separators'), separator,
            heading('Reliefs and seals'), ...(reliefs.length ? reliefs : [words('The text has none.')]),
            heading('Switches and trips'), ...(devices.length ? devices.map(v => deviceCard(b, v)) : [words('The text has none.')]),
            heading('Driving the air out'),
            words(`Nitrogen in at one end, out of doors at the other. After ${VOLUMES} volumes ${show(leftAfter(VOLUMES), '%', 2)} of oxygen is left where all mixes well; measure it at the far end, ${show(WANTED_OXYGEN, '%')} or less before hydrogen comes in.`),
            purgeTable(b),
            ...cylinders.map(c => words(`${c.name}${b.told(c, 'volume') ? `, ${b.told(c, 'volume')}` : ''}: filled with nitrogen and let down again, `, [1e5, 2e5, 5e5].filter(p => !(p > b.num(c, 'rating'))).map(p => `${fillings(p, air)} times to ${show(p, 'bar')}`).join(', or '), '. Oxygen read: ', blank())),
            quiet('Hoses and whatever has no volume in the text come on top.'),
            signed(),
        ];
    },
});
