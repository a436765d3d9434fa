/** Cards for when something acts or looks wrong: what is seen, what it can be, what is done first. */
import { faultGroups, outcomeText } from '../../../reference/run-text.js';
import { ruleNamed } from '../../../rules/index.js';
import type { View } from '../../../quantities/view.js';
import type { Bench } from '../bench.js';
import { blank, card, heading, pairs, quiet, table, words } from '../page.js';
import { definePaper } from '../paper.js';
import { setPointsOf } from '../set-points.js';

interface Sign {
    /** Rule whose reason tells why it matters, where there is one. */
    readonly rule?: string;
    readonly why?: string;
    readonly first: string;
    readonly canBe: string;
}
/** By what is sensed. Common practice, no source; why it matters stands on the page of the rule. */
const signs: Readonly<Record<string, Sign>> = {
    volume: { rule: 'bag-overpressure', first: 'Current stays off. Nothing is opened indoors. Let gas to the burner or out of doors by its own valve, look at the seal.', canBe: 'the switch that should have ended the filling; nothing drawn; a store swollen by warmth' },
    pressure: { why: 'The relief valve is the last thing between this pressure and a burst.', first: 'Everything off. Read the gauge from aside. Do not loosen a fitting; let down by the bleed, out of doors.', canBe: 'the pressure switch or its contactor; a valve shut or iced; warmth' },
    temperature: { rule: 'no-over-temperature-trip', first: 'Current off, leave everything shut, let it cool below 40 °C before anybody looks inside. No cold water on hot plastic.', canBe: 'cooling lost; lye low or not going round; current too high; a dry or shorted cell' },
    'discharge-temperature': { rule: 'discharge-too-hot', first: 'Compressor off. Let it cool. Pressure down by the bleed, out of doors.', canBe: 'valves worn; pressure too high; no air over it; oil low' },
    level: { rule: 'no-low-level-cut-out', first: 'Current stays off. Look for a drip, goggles on. Fill up with pure water only, cold; never start on a low level.', canBe: 'water used up; a leak; one side blocked so that the other fell; foam' },
    flow: { rule: 'fan-not-proven', first: 'Current stays off. Doors open from outside, wait; then look at the fan.', canBe: 'fan stopped, fuse, duct blocked' },
    oxygen: { rule: 'oxygen-in-hydrogen-before-compressor', first: 'Current and compressor off. No flame. What is in the bag since then goes out of doors, not to the burner.', canBe: 'a hole in a separator; air drawn in; levels apart; current too low; the cell of the analyser' },
    hydrogen: { rule: 'no-hydrogen-detector', first: 'Touch no switch inside. Out, doors open from outside, wait. Power off from elsewhere.', canBe: 'a joint, a hose off, a seal blown, a flame gone out; solvents and exhaust fool it' },
    current: { rule: 'low-load-impurity', first: 'Off. What was made meanwhile goes out of doors.', canBe: 'supply, lead, a dry cell, swapped setting' },
};
const suction: Sign = { rule: 'suction-pulls-below-ambient', first: 'Compressor off. Look at the bag and its line. What was drawn since then is measured for oxygen before it is kept.', canBe: 'bag empty or pinched; a kink; a bubbler iced; its switch' };
const tooHigh: Sign = { rule: 'overfill-floods-gas-line', first: 'Current stays off. Look at the level of the other side, it may have fallen. Goggles on; let out lye into a can only cold and without pressure, and look whether lye stands in the gas line.', canBe: 'filled too full; the other side blocked, so that its lye came over; foam; cooling water leaking in' };
const roomOxygen: Sign = { rule: 'oxygen-released-indoors', first: 'Current off, out, doors open from outside. No flame, no oily cloth near.', canBe: 'oxygen line off or leaking into the room; its vent blocked' };
const flameOut: Sign = { why: 'Gas that does not burn goes into the room.', first: 'Gas valve shut. Wait, air the place, then light anew from the side.', canBe: 'draught; water or ice in the line; bag empty; valve half shut' };
const signOf = (b: Bench, v: View): Sign | undefined => {
    const [part, quantity] = (b.controls.sensed(v) ?? '').split('.');
    const kind = b.other(part)?.kind;
    if (kind === 'burner' && quantity === 'temperature') return flameOut;
    if (kind === 'site' && quantity === 'oxygen') return roomOxygen;
    const side = v.word('trips.side');
    if (quantity === 'pressure' && side === 'below') return suction;
    return quantity === 'level' && side === 'above' ? tooHigh : signs[quantity];
};
/** Failures in one card before the rest is only counted. */
const MOST_CAUSES = 9;
const MOST_ROWS = 60;

function guardCard(b: Bench, v: View) {
    const sign = signOf(b, v);
    const points = setPointsOf(b, v).filter(p => p.key !== 'makes').map(p => `${p.key} ${p.side} ${p.at}`).join(', ');
    const caught = b.faults?.faults.filter(f => f.caughtBy?.name === v.name && f.part !== v.name).map(f => `${f.part} ${f.what}`) ?? [];
    const stops = b.controls.stops(v.name);
    return card(`${v.name} has acted${points ? ` (${points})` : ''}`, pairs([
        ['you see', [stops.length ? `${stops.filter(n => b.other(n)).slice(0, 6).join(', ')} dropped` : 'horn or light', '; reading now: ', blank()]],
        ['first', sign?.first ?? 'Current off; look, do not reset.'],
        ['it can be', caught.length ? `${caught.slice(0, MOST_CAUSES).join('; ')}${caught.length > MOST_CAUSES ? `; ${caught.length - MOST_CAUSES} more` : ''}${sign ? `. Or: ${sign.canBe}` : ''}` : [sign?.canBe ?? blank('long'), '; or its own wire, float or supply']],
        ['why it matters', (sign?.rule && ruleNamed(sign.rule)?.why) || sign?.why || blank('long')],
        ['before it is reset', ['cause found: ', blank('long'), ' who: ', blank()]],
    ]));
}
/** What is seen without any device, for parts that the rig has. Common practice, no source. */
const plain: readonly { readonly kinds: readonly string[]; readonly see: string; readonly canBe: string; readonly first: string }[] = [
    { kinds: ['seal'], see: 'A seal bubbles or has blown', canBe: 'line behind it blocked, iced or shut; store full; seal too shallow', first: 'Current off. Find what is shut. Liquid back to its mark before the next start.' },
    { kinds: ['bubbler', 'scrubber'], see: 'One bubbler stands still while current flows', canBe: 'leak before it; other side blocked; one gas goes through a separator', first: 'Current off at once. Both levels, both lines; then the separator check.' },
    { kinds: ['column'], see: 'The two levels drift apart', canBe: 'one outlet blocked; heads unequal; link blocked', first: 'Current off. Let them settle. Do not press on one side.' },
    { kinds: ['stack'], see: 'Volts fall or rise by more than their bounds at the same current', canBe: 'a dry or shorted cell, lye weak or cold, a lead warm at its end', first: 'Current off. Feel nothing by hand: ohmmeter and thermometer.' },
    { kinds: ['stack'], see: 'Lye drips or creeps, white crust', canBe: 'gaskets settled, a nut loose, a port cracked', first: 'Current off, cold, pressure out. Goggles. Rinse. Nuts by their torque only when cold.' },
    { kinds: ['supply', 'transformer', 'battery', 'charger'], see: 'It started by itself after a power cut', canBe: 'no latch in the chain, or one that is bridged', first: 'Off at the plug. It does not run again before that is mended.' },
    { kinds: ['relief-valve'], see: 'A relief valve hisses', canBe: 'cut-off failed; warmth; dirt in its seat', first: 'All off, keep away from its outlet, let it close. Never tap or turn it. It is tested before the next filling.' },
    { kinds: ['compressor'], see: 'The compressor hums and does not turn', canBe: 'it starts against pressure; unloader shut; start gear', first: 'Off within seconds. Minutes of rest. Unloader and check valve.' },
    { kinds: ['burner'], see: 'The flame whistles, goes back or goes out', canBe: 'too little gas; water in the line; air in the gas', first: 'Valve shut. Do not light again before the oxygen in the gas is measured.' },
];

export default definePaper({
    name: 'faults', place: 90, title: 'When something is wrong',
    purpose: 'What is seen, what it can be, what is done first, for every guard of this rig and for what shows without one.',
    needs: 'trip, analyser, detector, seal, relief-valve; single failures followed, if asked for',
    cautions: () => ['First the current, then the distance, then the thinking. No guard is bridged or reset to see whether it trips again.'],
    make: b => {
        // A switch that proves the air moves stops the rig as a trip does.
        const guards = b.parts('trip', 'analyser', 'detector', 'switch').filter(v => v.kind !== 'switch' || b.controls.sensed(v)?.endsWith('.flow'));
        const seen = plain.filter(p => b.parts(...p.kinds).length);
        const groups = b.faults ? faultGroups(b.faults).filter(g => ['hazard', 'escapes'].includes(g.faults[0].outcome)) : [];
        const unseen = b.faults?.faults.filter(f => f.outcome === 'unseen') ?? [];
        return [
            heading('A guard has acted'), ...(guards.length ? guards.map(v => guardCard(b, v)) : [words('The text has no trip, no analyser and no detector.')]),
            heading('Seen without a guard'),
            table(['you see', 'it can be', 'first'], seen.map(p => [p.see, p.canBe, p.first])),
            ...groups.flatMap(g => [heading(g.title), table(['fails', 'what comes of it', ...(g.faults.some(f => f.help) ? ['what would help'] : [])], g.faults.slice(0, MOST_ROWS).map(f => [`${f.part} ${f.what}`, outcomeText(f), f.help ?? '']))]),
            unseen.length > 0 && heading('Failures that nothing shows: only a test finds them'),
            unseen.length > 0 && words(`${unseen.slice(0, MOST_ROWS).map(f => `${f.part} ${f.what}`).join('; ')}.`),
            b.faults ? quiet('Single failures, one after the other, each on the hottest day of the site. Two at once were not followed.') : quiet('Single failures of this rig were not followed for this print; ask for them to see which failure each guard catches.'),
        ];
    },
});
