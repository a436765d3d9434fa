/**
 * What has gone wrong for others: two rigs for each kind of harm, after what became public of accidents (figures and rigs are our
 * own), and the rule that would have spoken beforehand. Which accident taught it stands beside each; all are told from memory.
 */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { wholeRig } from './whole-rigs.js';

interface Incident {
    readonly harm: string;
    readonly taught: string;
    readonly rule: string;
    readonly text: string;
}
/** A whole sound rig with a compressor and a cylinder, and one thing changed. */
const pressed = (change: (text: string) => string) => {
    for (let seed = 1; ; seed++) {
        const { text, store } = wholeRig(seed);
        if (store !== 'cylinder') continue;
        const changed = change(text);
        if (changed !== text) return changed;
    }
};
const line = (from: string | RegExp, to: string) => (text: string) => text.replace(from, to);

const incidents: readonly Incident[] = [
    {
        harm: 'a store that explodes', taught: 'Gangneung 2019: an electrolyser at low load on changing sun, oxygen above 3 % in the hydrogen, no analyser that stopped it; the buffer tanks exploded', rule: 'oxygen-in-hydrogen-before-compressor',
        text: pressed(text => text.replace(/^analyser oxygen-watch.*\n/m, '').replaceAll(/, oxygen-watch\b(\.alarm)?/g, '').replace('   opened-by: oxygen-watch', '')),
    },
    {
        harm: 'a store that explodes', taught: 'first fillings over air, several in collections of hydrogen lessons', rule: 'air-left-in-first-fill',
        text: pressed(text => text.replace(/^purge first-purge.*\n/m, '')),
    },
    {
        harm: 'a vessel that bursts', taught: 'fuel-gas and refrigerant cylinders refilled with another gas at a pressure that they were not made for', rule: 'propane-cylinder-reuse',
        text: pressed(line('  sort:             hydrogen\n  volume', '  sort:             LPG\n  volume')),
    },
    {
        harm: 'a vessel that bursts', taught: 'receivers pumped beyond their stamp after the only pressure switch stuck', rule: 'relief-missing',
        text: pressed(text => text.replace(/^relief-valve store-relief.*\n/m, '').replace(/^path hydrogen: cylinder -> store-relief.*\n/m, '').replace('covers: store-relief, use-relief', 'covers: use-relief').replace(/^vent relief-vent/m, 'vent relief-vent')),
    },
    {
        harm: 'gas in a room', taught: 'battery rooms of data centres and shelters, hydrogen from charging under the ceiling with the fan off', rule: 'no-high-opening',
        text: pressed(line(/openings: .*\n/, 'openings:         0.1 m2 at 1.2 m, 0.1 m2 at 0.2 m\n')).replace(/place: 2\.5 m {3}in-stream/, 'place: 1.2 m   in-stream'),
    },
    {
        harm: 'gas in a room', taught: 'Muskingum River 2007: a relief device let a delivery of hydrogen go where people stood', rule: 'relief-vents-indoors',
        text: pressed(line('vent relief-vent { place: outdoors-up', 'vent relief-vent { place: room')),
    },
    {
        harm: 'a mixture in the hands of people', taught: 'University of Hawaii 2016: hydrogen and oxygen kept mixed in one tank, lit by static or a gauge', rule: 'no-separator-gas-stored',
        text: 'rig "One tank for both", built\nsupply { sort: bench   voltage: 14 V   current-limit: 8 A   isolated: yes }\nstack { cells: 6   wetted: 80 x 100 mm   separator: none }\ncylinder tank { volume: 10 L   rating: 10 bar }\npath hydrogen: stack -> tank\n',
    },
    {
        harm: 'a mixture in the hands of people', taught: 'Yerevan 2012 and many celebrations: balloons with hydrogen among a crowd, and a flame', rule: 'balloon-indoors-or-public',
        text: 'rig "For the fair", drawn\npurpose { sort: balloon   audience: public }\nsite { place: outdoors }\nsupply { sort: bench   voltage: 14 V   current-limit: 8 A   isolated: yes }\nstack { cells: 6   wetted: 80 x 100 mm }\nballoon { diameter: 0.9 m   place: "over the stalls" }\npath hydrogen: stack -> balloon\npath oxygen: stack -> outdoors\n',
    },
    {
        harm: 'electric shock', taught: 'home-made cells on rectified mains without a transformer', rule: 'stack-on-unisolated-mains',
        text: 'rig "Straight from the wall", drawn\nsupply { sort: direct-mains   voltage: 310 V   isolated: no }\nstack { cells: 120   wetted: 80 x 100 mm }\n',
    },
    {
        harm: 'electric shock', taught: 'smoothing capacitors touched after the plug was out', rule: 'capacitor-no-bleed',
        text: 'rig "Smoothed", drawn\ntransformer { sort: toroid   mains: 230 V 50 Hz   power: 900 VA   secondary: 60 V }\nrectifier { circuit: bridge   reverse-rating: 200 V   sink: 1.5 K/W }\ncapacitor { capacitance: 40 mF   rating: 100 V   bleed: none }\nstack { cells: 30   wetted: 80 x 100 mm }\npath current: transformer -> rectifier -> capacitor -> stack\n',
    },
    {
        harm: 'lye in eyes and on skin', taught: 'burns of chemical plants and kitchens alike: caustic handled without goggles and water at hand', rule: 'lye-without-protection',
        text: pressed(line('goggles:          yes', 'goggles:          none')),
    },
    {
        harm: 'lye in eyes and on skin', taught: 'aluminium vessels and fittings eaten through by caustic, with hydrogen and a spill', rule: 'aluminium-touches-lye',
        text: pressed(line('demister: yes   sight: yes   material: PP', 'demister: yes   sight: yes   material: aluminium')),
    },
    {
        harm: 'air drawn into the hydrogen', taught: 'compressors whose suction ran empty and pulled air through a loose joint', rule: 'suction-pulls-below-ambient',
        text: 'rig "Pulls on", drawn\nsupply { sort: bench   voltage: 26 V   current-limit: 8 A   isolated: yes }\nstack { cells: 11   wetted: 90 x 110 mm }\nbag { volume: 60 L   rating: 2 kPa }\ncompressor { displacement: 9 cm3   speed: 2900 rpm }\ncylinder { volume: 20 L   rating: 15 bar }\npath hydrogen: stack -> bag -> compressor -> cylinder\n',
    },
    {
        harm: 'air drawn into the hydrogen', taught: 'valves that passed backwards when a plant was shut down and cooled', rule: 'check-valve-missing-or-reversed',
        text: pressed(text => text.replace(/^check-valve store-check.*\n/m, '').replaceAll('-> store-check ->', '->').replace(/, store-check\b/, '').replace(/^test check-holds.*\n/m, '').replace(/^unloader .*\n/m, '').replace(/^path hydrogen: discharge-tee -> unloader.*\n/m, '')),
    },
    {
        harm: 'a spark where gas is', taught: 'start relays and thermostats of refrigeration compressors beside leaks', rule: 'relay-box-in-gas-area',
        text: pressed(line(/start-gear-distance: .* m\n/, 'start-gear-distance: 0.1 m\n')),
    },
    {
        harm: 'a spark where gas is', taught: 'extract fans with ordinary motors that lit what they were to carry off', rule: 'fan-motor-in-stream',
        text: pressed(line('in-stream-motor: listed', 'in-stream-motor: ordinary')),
    },
    {
        harm: 'oxygen', taught: 'clothes and grease that burn like powder where oxygen gathers', rule: 'oxygen-released-indoors',
        text: 'rig "Oxygen does no harm", built\nsite { place: room   volume: 18 m3   openings: none }\nsupply { sort: bench   voltage: 26 V   current-limit: 8 A   isolated: yes }\nstack { cells: 11   wetted: 90 x 110 mm }\npath oxygen: stack -> room\npath hydrogen: stack -> outdoors\n',
    },
    {
        harm: 'oxygen', taught: 'oil in compressors that were put on oxygen', rule: 'compresses-oxygen-or-mixture',
        text: 'rig "Keeps the other gas too", drawn\nsupply { sort: bench   voltage: 26 V   current-limit: 8 A   isolated: yes }\nstack { cells: 11   wetted: 90 x 110 mm }\ncompressor { displacement: 9 cm3   speed: 2900 rpm   oil: mineral, 200 mL }\ncylinder { volume: 20 L   rating: 15 bar }\npath oxygen: stack -> compressor -> cylinder\npath hydrogen: stack -> outdoors\n',
    },
    {
        harm: 'a guard that was none', taught: 'float switches and pressure switches wired so that a broken wire meant go on', rule: 'interlock-fails-unsafe',
        text: pressed(line('if-wire-breaks: breaks   range: 2..16 bar', 'if-wire-breaks: makes   range: 2..16 bar')),
    },
    {
        harm: 'a guard that was none', taught: 'shut-off valves found closed under relief valves', rule: 'relief-isolated',
        text: pressed(text => text.replace('path hydrogen: cylinder -> store-relief', 'valve under-relief { sort: hand   rating: 40 bar }\npath hydrogen: cylinder -> under-relief -> store-relief')),
    },
];

describe('what has gone wrong for others', () => {
    it.each(incidents.map(i => [`${i.harm}: ${i.rule}`, i] as const))('%s', (_, { text, rule, taught }) => {
        const findings = analyseText(text, { today: '2026-06-15' }).findings.filter(f => f.severity !== 'hint');
        expect(findings.map(f => f.rule), `${taught}\n${findings.map(f => f.message).join('\n')}`).toContain(rule);
    });
    it('two at least for each kind of harm', () => {
        const counts = new Map<string, number>();
        for (const { harm } of incidents) counts.set(harm, (counts.get(harm) ?? 0) + 1);
        expect(counts.size).toBeGreaterThanOrEqual(10);
        for (const [harm, n] of counts) expect(n, harm).toBeGreaterThanOrEqual(2);
    });
});
