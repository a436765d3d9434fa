/** One mistake at a time, put into a rig that had none: what a hurried maker leaves out, mixes up or sets wrongly, and which rule is to speak. */
import type { Store, Whole } from './whole-rigs.js';

export interface Fault {
    readonly name: string;
    /** Any of these tells it. */
    readonly rules: readonly string[];
    /** The text with the mistake in it; the same text where the rig cannot have it. */
    readonly put: (text: string) => string;
    readonly only?: readonly Store[];
}
const all = (text: string, from: string | RegExp, to: string) => text.replaceAll(from instanceof RegExp ? new RegExp(from.source, from.flags.includes('g') ? from.flags : `${from.flags}g`) : from, to);
/** The header of a part and its block, on one line or on many. */
const block = (head: string) => new RegExp(`^${head}(?: like [\\w-]+)?(?: +\\{(?:[^{}\\n]*\\}|[^{}]*\\n\\})|$)\\n?`, 'm');
/** Another value for a property of a part. */
const set = (head: string, property: string, value: string) => (text: string) => text.replace(block(head), b => b.replace(new RegExp(`(\\b${property}:\\s+)(?:(?!\\s{2,}|\\s*\\}|\\n).)+`), `$1${value}`));
/** The property is not given. */
const unsaid = (head: string, property: string) => (text: string) => text.replace(block(head), b => b.replace(new RegExp(`[ \\n]*\\b${property}:\\s+(?:(?!\\s{2,}|\\s*\\}|\\n).)+`), ''));
const gone = (head: string) => (text: string) => text.replace(block(head), '');
/** Taken out of every list and path, and its block too. */
const removed = (name: string, kind: string) => (text: string) => {
    const rest = gone(`${kind}${kind === name ? '' : ` ${name}`}`)(text);
    return rest.split('\n').filter(line => !new RegExp(`^path .*-> ${name}$`).test(line)).map(line => (line.startsWith('path ') ? all(all(line, `-> ${name} ->`, '->'), `: ${name} -> `, ': ') : all(all(line, new RegExp(`, ${name}\\b(?![-.])`), ''), new RegExp(`(: )${name}, `), '$1'))).join('\n');
};
const notStoppedBy = (name: string) => (text: string) => text.replace(/^contactor main .*$/m, line => all(line, new RegExp(`,? ${name}\\b(?!-)`), ''));

export const faults: readonly Fault[] = [
    { name: 'no relief valve on the cylinder', rules: ['relief-missing'], only: ['cylinder'], put: removed('store-relief', 'relief-valve') },
    { name: 'relief set above the stamp', rules: ['relief-set-point-order', 'part-rated-below-relief'], only: ['cylinder'], put: set('relief-valve store-relief', 'set', '24 bar') },
    { name: 'cut-off above the rating', rules: ['cut-off-above-rating', 'relief-set-point-order'], only: ['cylinder'], put: set('switch cut-off', 'breaks', 'above 26 bar') },
    { name: 'relief below the cut-off', rules: ['relief-set-point-order'], only: ['cylinder'], put: set('relief-valve store-relief', 'set', '8 bar') },
    { name: 'relief too small for the compressor', rules: ['relief-too-small'], only: ['cylinder'], put: set('relief-valve store-relief', 'capacity', '20 L/h hydrogen') },
    { name: 'no check valve before the cylinder', rules: ['check-valve-missing-or-reversed', 'unloader-without-check-valve'], only: ['cylinder'], put: text => gone('test check-holds')(removed('store-check', 'check-valve')(text)) },
    { name: 'compressor cannot unload', rules: ['starts-against-head'], only: ['cylinder'], put: removed('unloader', 'unloader') },
    { name: 'unloader stays shut without power', rules: ['bypass-normally-wrong'], only: ['cylinder'], put: set('unloader', 'if-unpowered', 'shuts') },
    { name: 'nothing stops the compressor when the bag is empty', rules: ['suction-pulls-below-ambient', 'single-switch-guards-bag'], only: ['cylinder'], put: text => removed('suction-low', 'trip')(removed('bag-empty', 'switch')(text)) },
    { name: 'cut-off keeps running when its wire breaks', rules: ['interlock-fails-unsafe'], only: ['cylinder'], put: set('switch cut-off', 'if-wire-breaks', 'makes') },
    { name: 'bag-full keeps running when its wire breaks', rules: ['interlock-fails-unsafe'], only: ['bag', 'bell', 'cylinder'], put: set('switch bag-full', 'if-wire-breaks', 'makes') },
    { name: 'trip on the stack does not act when its wire breaks', rules: ['interlock-fails-unsafe'], put: set('trip hot-stack', 'if-wire-breaks', 'nothing') },
    { name: 'detector drops nothing', rules: ['alarm-without-action'], put: notStoppedBy('gas-watch') },
    { name: 'temperature trip wired to nothing', rules: ['control-drives-nothing', 'no-over-temperature-trip'], put: notStoppedBy('hot-stack') },
    { name: 'no detector indoors', rules: ['no-hydrogen-detector'], only: ['cylinder'], put: text => removed('gas-watch', 'detector')(text).replace(/gas-watch\.alarm, /, '') },
    { name: 'aluminium column', rules: ['aluminium-touches-lye'], put: set('column h2-column', 'material', 'aluminium') },
    { name: 'brass manifold', rules: ['copper-alloy-in-lye'], put: text => text.replace('manifold:         internal, PP', 'manifold:         internal, brass') },
    { name: 'polycarbonate column', rules: ['plastic-or-rubber-unfit'], put: set('column h2-column', 'material', 'PC') },
    { name: 'polycarbonate, spelt out', rules: ['word-not-known'], put: set('column h2-column', 'material', 'polycarbonate') },
    { name: 'mains joined to the plates', rules: ['stack-on-unisolated-mains'], put: set('supply power', 'isolated', 'no') },
    { name: 'no residual current device', rules: ['no-residual-current-device'], put: text => (/sort: (bench|switch-mode)|^transformer|^compressor|^feed .*230 V/m.test(text) ? set('site', 'rcd', 'none')(text) : text) },
    { name: 'battery without a fuse', rules: ['battery-source-unfused'], put: removed('bank-fuse', 'fuse') },
    { name: 'fuse above the leads', rules: ['cable-unprotected'], put: text => set('fuse main-fuse', 'rating', '200 A')(text) },
    { name: 'thin leads', rules: ['lead-voltage-drop', 'cable-unprotected'], put: set('leads', 'section', '0.75 mm2') },
    { name: 'far too many cells for the volts', rules: ['supply-below-reversible', 'supply-below-useful-voltage'], put: text => set('stack', 'plates', '61')(text.replace(/cells: +\d+(?= per group)/, 'cells:            30').replace(/cells: +\d+\n/, 'cells:            30\n')) },
    { name: 'no separator', rules: ['no-separator-gas-stored'], put: text => gone('test separator-whole')(gone('separator')(text)).replace('\n  gap: ', '\n  separator:        none\n  gap: ') },
    { name: 'separator too coarse for the heads', rules: ['bubble-point-below-head'], put: set('separator', 'bubble-pressure', '0.2 kPa') },
    { name: 'oxygen bubbler far deeper than the hydrogen one', rules: ['heads-unequal', 'bubble-point-below-head'], only: ['vented', 'bag', 'cylinder'], put: set('bubbler o2-bubbler', 'immersion', '170 mm') },
    { name: 'hydrogen seal shallower than the bubbler', rules: ['seal-depth-vs-head'], put: set('seal h2-seal', 'depth', '60 mm') },
    { name: 'bag seal deeper than the bag bears', rules: ['seal-depth-vs-head', 'bag-overpressure'], only: ['bag', 'cylinder'], put: set('seal bag-seal', 'depth', '900 mm') },
    { name: 'nothing stops the stack when the bag is full', rules: ['full-bag-stops-nothing'], only: ['bag', 'bell', 'cylinder'], put: text => removed('bag-high', 'trip')(removed('bag-full', 'switch')(text)).replace('needs: main   stopped-by: bag-full', 'needs: main   stopped-by: emergency') },
    { name: 'bag switches crossed', rules: ['limits-too-close-or-crossed'], only: ['bag', 'bell', 'cylinder'], put: set('switch bag-full', 'makes', 'below 400 L') },
    { name: 'both gases into one column', rules: ['both-gases-one-column', 'part-joins-both-gases'], put: text => all(text, 'path oxygen: stack -> o2-column -> o2-tee', 'path oxygen: stack -> h2-column -> o2-tee') },
    { name: 'both gases into one vent', rules: ['part-joins-both-gases'], put: text => all(text, '-> o2-bubbler -> o2-vent -> outdoors', '-> o2-bubbler -> h2-vent -> outdoors') },
    { name: 'hydrogen vent into the room', rules: ['relief-vents-indoors'], only: ['cylinder'], put: set('vent h2-vent', 'place', 'room') },
    { name: 'relief blows into the room', rules: ['relief-vents-indoors'], only: ['cylinder'], put: set('vent relief-vent', 'place', 'room') },
    { name: 'arrestor left out', rules: ['no-bubbler-or-seal'], only: ['bag', 'bell', 'cylinder'], put: removed('arrestor', 'arrestor') },
    { name: 'the room has no openings', rules: ['fan-without-inlet'], only: ['cylinder'], put: set('site', 'openings', 'none') },
    { name: 'column below the stack', rules: ['column-below-stack'], put: set('column h2-column', 'base-height', '100 mm') },
    { name: 'cylinder of unknown past', rules: ['previous-gas-left'], only: ['cylinder'], put: set('cylinder', 'previous', 'acetylene') },
    { name: 'cylinder test lapsed', rules: ['test-date-lapsed'], only: ['cylinder'], put: set('cylinder', 'test-date', '2009-03') },
    { name: 'cylinder loose', rules: ['cylinder-not-secured'], only: ['cylinder'], put: set('cylinder', 'secured', 'none') },
    { name: 'cylinder without words', rules: ['cylinder-not-labelled'], only: ['cylinder'], put: set('cylinder', 'label', 'none') },
    { name: 'regulator for another gas', rules: ['regulator-wrong-kind'], only: ['cylinder'], put: set('regulator', 'listed-for', 'air') },
    { name: 'oxygen analyser left out', rules: ['oxygen-in-hydrogen-before-compressor'], only: ['cylinder'], put: text => removed('oxygen-watch', 'analyser')(text).replace(', oxygen-watch.alarm', '').replace('   opened-by: oxygen-watch', '') },
    { name: 'no eye wash', rules: ['lye-without-protection'], put: set('site', 'eye-wash', 'none') },
    { name: 'no goggles', rules: ['lye-without-protection'], put: set('site', 'goggles', 'none') },
    { name: 'lye of 4 per cent', rules: ['lye-strength-off-optimum'], put: set('lye', 'strength', '4 wt%') },
    { name: 'tap water', rules: ['feed-water-not-pure'], put: set('lye', 'water', 'tap') },
    { name: 'separator never tested', rules: ['separator-not-tested'], put: gone('test separator-whole') },
    { name: 'never leak-tested', rules: ['leak-test-missing'], put: gone('test low-side-tight') },
    { name: 'trips never proven', rules: ['trip-never-proven'], put: gone('test trips-act') },
    { name: 'never purged', only: ['cylinder'], rules: ['air-left-in-first-fill'], put: gone('purge first-purge') },
    { name: 'fan motor in the gas', rules: ['fan-motor-in-stream'], only: ['cylinder'], put: set('fan', 'in-stream-motor', 'ordinary') },
    { name: 'compressor relay beside the gas', rules: ['relay-box-in-gas-area'], only: ['cylinder'], put: set('compressor', 'start-gear-distance', '50 mm') },
    { name: 'comes back by itself after a power cut', rules: ['auto-restart-after-power-cut'], put: text => set('supply power', 'restarts-by-itself', 'yes')(text).replace('latched-by: start-button   ', '') },
    { name: 'no emergency stop', rules: ['emergency-stop-incomplete'], put: notStoppedBy('emergency') },
    { name: 'hot trip far above what the stack bears', rules: ['trip-above-limit'], put: set('trip hot-stack', 'trips', 'above 95 °C') },
    { name: 'low-level trip below the port', rules: ['no-low-level-cut-out'], put: set('trip h2-level-low', 'trips', 'below 30 mm') },
    { name: 'frost reaches the bubblers', rules: ['lye-freezes'], put: text => set('site', 'coldest', '-25 °C')(text) },
    { name: 'counterweight heavier than the bell', rules: ['gasometer-head'], only: ['bell'], put: text => text.replace(/bell-mass:( +)([\d.]+) kg/, (line, gap, kg) => `counterweight:${gap}${Number((1.1 * Number(kg)).toPrecision(3))} kg\n  ${line}`) },
    { name: 'bell without guides', rules: ['gasometer-guide-sticks'], only: ['bell'], put: set('gasometer bell', 'guides', 'no') },
    { name: 'bell four times as heavy as the seals were made for', rules: ['heads-unequal', 'seal-depth-vs-head'], only: ['bell'], put: text => text.replace(/bell-mass:( +)([\d.]+) kg/, (_, s, kg) => `bell-mass:${s}${Number((4 * Number(kg)).toPrecision(3))} kg`) },
    { name: 'winding far too small', rules: ['transformer-rms-overload'], put: text => text.replace(/(transformer power .* power: )(\d+) VA/, (_, line, va) => `${line}${Math.round(Number(va) / 3)} VA`) },
    { name: 'rectifier left out', rules: ['ac-through-stack'], put: removed('bridge', 'rectifier') },
    { name: 'diodes for too little reverse voltage', rules: ['rectifier-peak-inverse-low'], put: set('rectifier bridge', 'reverse-rating', '12 V') },
    { name: 'winding added by hand, insulation not said', rules: ['stack-on-unisolated-mains', 'cannot-check-a-hazard'], put: set('transformer power', 'sort', 'rewound') },
    { name: 'groups counted as one row of cells', rules: ['plates-vs-cells-mismatch'], put: text => text.replace('  groups:           2\n', '').replace(' per group\n  feed:             middle', '') },
    { name: 'panels fed from the battery', rules: ['current-path-backwards'], put: text => text.replace('roof -> charger -> bank -> bank-fuse', 'bank -> charger -> roof -> bank-fuse') },
    { name: 'decimal comma', rules: ['decimal-comma'], put: set('budget', 'tariff', '0,31 EUR/kWh') },
    { name: 'a name that nobody bears', rules: ['unknown-name'], put: text => text.replace('-> o2-vent -> outdoors', '-> o3-vent -> outdoors') },
    { name: 'two parts of one name', rules: ['name-taken'], put: text => `${text}\ntee h2-tee\n` },
    { name: 'a unit of another kind', rules: ['wrong-dimension'], put: set('lye', 'fill', '5 kg/h') },
];

/** Rigs looked at for one that can have a fault. */
const MOST_TRIED = 40;
/** The rigs of a list of faults: each fault in turn, in the next rig that can have it. */
export function* withFaults(count: number, rigOf: (seed: number) => Whole): Generator<{ readonly fault: Fault; readonly whole: Whole; readonly text: string }> {
    for (let k = 0, seed = 1; k < count; k++, seed++) {
        const fault = faults[k % faults.length];
        for (let tried = 0; tried < MOST_TRIED; tried++, seed++) {
            const whole = rigOf(seed);
            const text = !fault.only || fault.only.includes(whole.store) ? fault.put(whole.text) : whole.text;
            if (text === whole.text) continue;
            yield { fault, whole, text };
            break;
        }
    }
}
