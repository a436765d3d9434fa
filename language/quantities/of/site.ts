/** The place: air, room clock, ventilation. */
import { LOWER_LIMIT, oxygenClock, passiveFlow, roomClock, steadyFraction } from '../../physics/ventilation.js';
import { gasVolume } from '../../physics/gas-volume.js';
import { defineQuantity } from '../define.js';
import { airPressureOf, extracts, ROOM } from '../surroundings.js';
import type { View } from '../view.js';

/** Fraction that a room must stay under: a quarter of the lower flammable limit, hydrogen best-practice pages (h2tools.org). */
const QUARTER_OF_LIMIT = LOWER_LIMIT / 4;
/** Oxygen above which air counts as enriched: gas industry codes, from memory. */
const ENRICHED = 0.235;
/** K by which a shed is taken to be warmer than the air outside. Common practice, no source. */
const WARMER_INSIDE = 2;
/**
 * m/s through half of openings that all lie at one height, where air comes in below and leaves above in the same opening.
 * The textbook form (from memory), a third of the discharge factor times √(g h ΔT/T), gives 0.028 to 0.057 m/s over the whole
 * opening for 0.3 to 1.2 m of height and 2 K: half of it at 0.05 m/s is the careful end.
 */
const ONE_SIDED = 0.05;

/** All the hydrogen made, m³/s at 20 °C and the air's pressure. */
const leak = (q: View) => gasVolume(q.the('stack')?.q('hydrogen-rate') ?? NaN, ROOM, airPressureOf(q));

export default [
    defineQuantity({ name: 'air-pressure', of: 'site', measure: 'pressure', unit: 'kPa', absolute: true, meaning: 'Pressure of the air at the site, above vacuum: stated, or by its height above the sea.', formula: '101.325 kPa (1 - 2.256e-5 h)^5.256', source: 'ISO 2533', work: q => q.airPressure() }),
    defineQuantity({ name: 'room-clock', of: 'site', measure: 'time', unit: 'h', meaning: 'Time in which all the hydrogen made, let into the shut room and evenly mixed, reaches 1 % (a quarter of the lower flammable limit). At the ceiling it is there much sooner.', formula: 'V / leak x ln(1 / (1 - 0.01))', source: 'dilution of a well-mixed room', shownAt: 'volume', shownAs: '1 % in', work: q => roomClock(q.num('volume'), leak(q), QUARTER_OF_LIMIT) }),
    defineQuantity({ name: 'oxygen-clock', of: 'site', measure: 'time', unit: 'h', meaning: 'Time in which all the oxygen made, let into the shut room, brings its air to 23.5 %, where cloth and oil burn fiercely.', formula: 'well-mixed room', source: 'limit as used by gas industry bodies', work: q => oxygenClock(q.num('volume'), leak(q) / 2, ENRICHED) }),
    defineQuantity({ name: 'passive-flow', of: 'site', measure: 'flow', unit: 'm3/h', meaning: 'Air that the stated openings pass by warmth alone, 2 K warmer inside; wind not counted.', formula: 'low and high opening in series, buoyancy; at one height half of the free area at 0.05 m/s', source: 'textbook, discharge factor 0.6; 2 K: common practice, no source', work: q => {
        const openings = q.rows('openings').map(r => ({ area: r.get('area')?.number ?? NaN, height: r.get('height')?.number ?? NaN, free: r.get('free')?.number ?? NaN }));
        if (!openings.length) return q.num('openings');
        const heights = openings.map(o => o.height);
        const [low, high] = [Math.min(...heights), Math.max(...heights)];
        const free = (o: (typeof openings)[number]) => o.area * (o.free === o.free ? o.free : q.maybe('free-area', 0.5));
        if (!(high > low)) return 0.5 * openings.reduce((s, o) => s + free(o), 0) * ONE_SIDED;
        const sum = (h: number) => openings.filter(o => (h === low ? o.height < (low + high) / 2 : o.height >= (low + high) / 2)).reduce((s, o) => s + free(o), 0);
        return passiveFlow(sum(low), sum(high), high - low, ROOM + WARMER_INSIDE, ROOM);
    } }),
    defineQuantity({ name: 'ventilation', of: 'site', measure: 'flow', unit: 'm3/h', meaning: 'Fresh air: the extract fan, or what the openings pass by themselves, whichever is more.', formula: 'larger of fan and passive flow', source: 'definition', work: q => {
        const fan = q.all('fan').filter(extracts).reduce((s, f) => s + f.maybe('flow', 0), 0);
        const passive = q.maybeQ('passive-flow', 0);
        return fan || passive ? Math.max(fan, passive) : q.num('openings');
    } }),
    defineQuantity({ name: 'leak-share', of: 'site', measure: 'fraction', meaning: 'Hydrogen in the room, evenly mixed, if all that is made escapes into it for hours.', formula: 'leak / (leak + fresh air)', source: 'dilution', work: q => steadyFraction(leak(q), q.q('ventilation')) }),
];
