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
    { name: 'a tap in the oxygen line, and nothing gives way', rules: ['no-passive-low-pressure-relief'], put: text => `${gone('seal o2-seal')(text.replace(/^path oxygen: o2-tee -> o2-seal.*\n/m, '')).replace('-> o2-bubbler -> o2-vent', '-> o2-bubbler -> o2-tap -> o2-vent').replaceAll(', blow-off', '').replaceAll('lid: blow-off', 'lid: fixed')}valve o2-tap { sort: hand   bore: 12 mm }\n` },
    { name: 'water comes by itself, and nothing ends it', rules: ['overfill-floods-gas-line'], put: text => `${removed('h2-level-high', 'trip')(removed('o2-level-high', 'trip')(text))}valve make-up { sort: solenoid   if-unpowered: shuts   opened-by: water-low }\nswitch water-low { senses: o2-column.level   makes: below 255 mm   breaks: above 265 mm   if-wire-breaks: breaks }\npath water: tap -> make-up -> o2-column\n` },
    { name: 'water poured in through the cap', rules: ['refill-opens-gas-space'], put: set('column h2-column', 'fill-point', 'cap') },
    { name: 'columns that nobody can look into', rules: ['level-not-visible'], put: set('column h2-column', 'sight', 'no') },
    { name: 'shell of the compressor never purged', rules: ['air-in-sealed-shell'], only: ['cylinder'], put: text => text.replace(', compressor, cylinder   with', ', cylinder   with') },
    { name: 'check valve never tried', rules: ['check-valve-not-tested'], only: ['cylinder'], put: gone('test check-holds') },
    { name: 'open switch beside the bag', rules: ['contact-spark-near-gas'], only: ['bag', 'cylinder'], put: set('switch bag-full', 'enclosure', 'open   distance-to-gas: 0.1 m') },
    { name: 'detector set to three per cent', rules: ['detector-acts-too-late'], put: set('detector gas-watch', 'trips', 'above 3 %') },
    { name: 'detector near the floor', rules: ['detector-in-wrong-place'], only: ['cylinder'], put: set('detector gas-watch', 'height', '0.4 m') },
    { name: 'fan off with the rest', rules: ['fan-stops-with-stack'], only: ['cylinder'], put: text => text.replace('in-stream-motor: listed   fed-from: fan-line', 'in-stream-motor: listed   fed-from: fan-line   needs: main').replace('needs: fan-flow   stopped-by', 'stopped-by') },
    { name: 'one contactor stops it all', rules: ['output-device-fails-on'], put: text => text.replace('needs: main, stack-contactor', 'needs: main') },
    { name: 'bag trip above what the bag holds', rules: ['set-point-out-of-reach'], only: ['bag', 'cylinder'], put: set('trip bag-high', 'trips', 'above 9000 L') },
    { name: 'bad gas stops the stack, not the compressor', rules: ['trip-order-leaves-suction', 'oxygen-in-hydrogen-before-compressor'], only: ['cylinder'], put: text => notStoppedBy('oxygen-watch')(text).replace('contactor stack-contactor { needs: main   stopped-by: bag-full', 'contactor stack-contactor { needs: main   stopped-by: oxygen-watch, bag-full') },
    { name: 'hoses of the bubbler swapped', rules: ['bubbler-connected-backwards'], put: text => text.replace('bubbler o2-bubbler {', 'bubbler o2-bubbler { enters: top  ') },
    { name: 'a thimble of water in the bubbler', rules: ['bubbler-floods-back'], put: set('bubbler o2-bubbler', 'water', '0.05 L') },
    { name: 'line only pushed on', rules: ['hose-not-secured'], only: ['cylinder'], put: set('tube high-line', 'secured', 'no') },
    { name: 'catalyst without a thermometer', rules: ['recombiner-hot-spot'], only: ['cylinder'], put: text => `${text.replace('-> scrubber -> store-bag', '-> scrubber -> cleaner -> store-bag')}recombiner cleaner\n` },
    { name: 'table salt', rules: ['electrolyte-makes-chlorine'], put: set('lye', 'solute', 'NaCl') },
    { name: 'cooler on the tap', rules: ['cooler-leak-direction'], put: set('cooler h2-cooler', 'water-side', 'mains') },
    { name: 'steel cooler on an earthed pipe', rules: ['earthed-coil-in-lye', 'metal-joins-both-ends'], put: text => set('cooler h2-cooler', 'earthed', 'yes')(set('cooler h2-cooler', 'material', 'stainless-316L')(text)) },
    { name: 'supply under the stack', rules: ['wet-parts-above-electrics'], put: text => gone('tray')(text).replace('site {\n', 'site {\n  heights:          power at 0.1 m, stack at 0.5 m\n') },
    { name: 'gas caught in a jar', rules: ['gas-collected-in-jar'], put: text => `${text}test yield { date: 2026-05-20   with: inverted jar of 3 L over water   result: passed }\n` },
    { name: 'no place to let nitrogen in', rules: ['no-purge-point'], only: ['cylinder'], put: text => text.replace(/^purge-point .*\n/gm, '') },
    { name: 'one side pressed hard', rules: ['one-side-test-strains-separator', 'separator-test-proves-little'], put: text => text.replace('with: nitrogen, both sides linked, bag and seals blanked   pressure: 1.7 kPa', 'with: nitrogen, hydrogen side alone   pressure: 120 kPa') },
    { name: 'opened as soon as it stands', rules: ['opened-before-discharge'], put: text => text.replace('start, stop, ', 'start, stop, open stack, ') },
    { name: 'pressed with gas above the stamp', rules: ['pressed-with-gas-above-rating'], only: ['cylinder'], put: set('test high-side-tight', 'pressure', '30 bar') },
    { name: 'tightness tried with hydrogen', rules: ['tested-with-hydrogen'], only: ['cylinder'], put: set('test high-side-tight', 'with', 'hydrogen and soap') },
    { name: 'oxygen kept in a bag', rules: ['oxygen-kept'], put: text => `${text.replace('-> o2-bubbler -> o2-vent -> outdoors', '-> o2-bubbler -> o2-bag')}bag o2-bag { volume: 80 L }\n` },
    { name: 'separator test failed', rules: ['separator-test-failed'], put: set('test separator-whole', 'result', 'failed') },
    { name: 'level ran away in the separator test', rules: ['separator-lets-more-through'], put: text => text.replace('separator { material: composite', 'separator { material: composite   permeability: 2 L/(m2·h·kPa)').replace('hydrogen side alone   pressure: 2.6 kPa   lasted: 10 min', 'hydrogen side alone   pressure: 2.6 kPa   lasted: 10 min   level-change: 150 mm') },
    { name: 'oxygen cylinders beside it', rules: ['fuel-and-oxygen-stored-together'], only: ['cylinder'], put: set('site', 'oxygen-cylinders', 'oxygen cylinder at 2 m') },
    { name: 'heater beside it', rules: ['ignition-or-intake-near'], put: set('site', 'ignition-sources', 'heater at 1 m') },
    { name: 'the way out is at the waist', rules: ['no-high-opening'], only: ['cylinder'], put: text => text.replace(/ m2 at 2\.5 m, /, ' m2 at 1 m, ').replace('m3/h   place: 2.5 m', 'm3/h   place: 1 m') },
    { name: 'steel manifold through the cells', rules: ['metal-manifold-bridges-cells'], put: text => text.replace('manifold:         internal, PP', 'manifold:         internal, stainless-316L') },
    { name: 'a trickle overnight into the bag', rules: ['trickle-gas-kept'], only: ['bag'], put: text => text.replace('  max-temperature:  65 °C\n', '  max-temperature:  65 °C\n  trickle:          0.1 A\n') },
    { name: 'cylinder taken by car', rules: ['cylinder-carried-in-vehicle'], only: ['cylinder'], put: set('routine', 'carried', 'yes') },
    { name: 'no relief behind the regulator', rules: ['low-side-relief-missing'], only: ['cylinder'], put: removed('use-relief', 'relief-valve') },
    { name: 'nothing ends the filling', rules: ['no-pressure-cut-off'], only: ['cylinder'], put: text => removed('high-high', 'trip')(text).replace(block('switch cut-off'), '').replace('stopped-by: cut-off, ', 'stopped-by: ') },
    { name: 'no valve at the store', rules: ['no-shut-off-at-store'], only: ['cylinder'], put: text => set('cylinder', 'hand-valve', 'no')(text).replace('cylinder -> outlet-valve -> regulator', 'cylinder -> regulator').replace(/^valve outlet-valve.*\n/m, '').replace('store-purge { on: outlet-valve }', 'store-purge { on: use-tee }') },
    { name: 'a throw-away cylinder', rules: ['non-refillable-reused'], only: ['cylinder'], put: set('cylinder', 'sort', 'disposable') },
    { name: 'a propane bottle', rules: ['propane-cylinder-reuse'], only: ['cylinder'], put: set('cylinder', 'sort', 'LPG') },
    { name: 'an air receiver', rules: ['vessel-not-for-hydrogen'], only: ['cylinder'], put: set('cylinder', 'sort', 'air-receiver') },
    { name: 'right-hand thread on the valve', rules: ['outlet-thread-wrong'], only: ['cylinder'], put: set('cylinder', 'outlet', '"G 5/8 RH"') },
    { name: 'nothing stamped on it', rules: ['cylinder-rating-unknown'], only: ['cylinder'], put: set('cylinder', 'rating', 'unknown') },
    { name: 'a tap before the relief valve', rules: ['relief-isolated'], only: ['cylinder'], put: text => `${text.replace('path hydrogen: cylinder -> store-relief', 'path hydrogen: cylinder -> service-tap -> store-relief')}valve service-tap { sort: hand   rating: 40 bar }\n` },
    { name: 'relief valve from years ago', rules: ['relief-out-of-date'], only: ['cylinder'], put: text => gone('test relief-lifts')(set('relief-valve store-relief', 'tested', '2016-02-10')(text)) },
    { name: 'a thin pipe behind the relief valve', rules: ['relief-outlet-chokes'], only: ['cylinder'], put: set('relief-valve store-relief', 'outlet', '3 mm bore, 8 m long') },
    { name: 'frost in a level vent', rules: ['vent-freezes-or-blocks'], put: text => set('site', 'coldest', '-3 °C')(set('vent o2-vent', 'slope', '0 %')(text)) },
    { name: 'sides mixed up', rules: ['polarity-disagrees-with-sides'], put: set('stack', 'hydrogen-half', 'left') },
    { name: 'a burner from the camping stove', rules: ['burner-for-other-gas'], only: ['bag', 'cylinder'], put: set('burner', 'sort', 'LPG') },
    { name: 'nothing sees the flame', rules: ['flame-invisible'], only: ['cylinder'], put: set('burner', 'flame-proof', 'none') },
    { name: 'relay box over the gas', rules: ['box-traps-hydrogen'], only: ['cylinder'], put: set('site', 'boxes-over-gas', 'closed relay box') },
    { name: 'lamp at the ridge', rules: ['ordinary-fitting-high-up'], only: ['cylinder'], put: set('site', 'high-zone-fittings', 'lamp at 2.5 m') },
    { name: 'fuse of a car', rules: ['direct-current-arc'], put: set('fuse main-fuse', 'dc-rating', '12 V') },
    { name: 'switch for twelve volts', rules: ['direct-current-arc'], put: set('isolator bank-switch', 'rating', '63 A at 12 V DC') },
    { name: 'clips beside the bubbler', rules: ['loose-joint-near-gas'], put: text => set('leads', 'ends', 'clip   distance-to-gas: 0.3 m')(text) },
    { name: 'minus earthed beside a steel column', rules: ['two-ways-to-earth', 'earthed-coil-in-lye', 'metal-joins-both-ends'], put: text => set('site', 'dc-earthed', 'minus')(set('column h2-column', 'material', 'stainless-316L')(text)).replace(/bonded: +bench/, 'bonded: h2-column, bench') },
    { name: 'arrestor for propane', rules: ['arrestor-wrong-gas'], only: ['bag', 'cylinder'], put: set('arrestor', 'listed-for', 'propane') },
    { name: 'arrestor far from the flame', rules: ['arrestor-wrong-place'], only: ['bag', 'cylinder'], put: set('arrestor', 'distance', '6 m') },
    { name: 'start gear open on the crankcase', rules: ['shell-pressure-too-high'], only: ['cylinder'], put: text => text.replace('sort:             hermetic-reciprocating', 'sort:             hermetic-rotary').replace('shell-rating:     19 bar', 'shell-rating:     6 bar') },
    { name: 'a piston that breathes', rules: ['crankcase-breathes-into-room'], only: ['cylinder'], put: text => text.replace('sort:             hermetic-reciprocating', 'sort:             open-piston').replace('crankcase:        sealed', 'crankcase:        open') },
    { name: 'glass bottle with a tight lid', rules: ['bubbler-cannot-hold'], only: ['vented', 'bag'], put: text => set('bubbler h2-bubbler', 'body', 'glass, 0.2 L headspace')(set('bubbler h2-bubbler', 'lid', 'fixed')(text)) },
    { name: 'in the cellar of a home', rules: ['dwelling-or-cellar'], only: ['cylinder'], put: set('site', 'place', 'cellar') },
    { name: 'both vents through one hole', rules: ['vents-side-by-side'], put: text => set('vent o2-vent', 'distance', '0.2 m from h2-vent')(set('vent h2-vent', 'distance', '0.2 m from o2-vent')(text)) },
    { name: 'water once a week', rules: ['level-drop-uncovers-port'], put: text => text.replace('cold, every 4 h', 'cold, every 60 h') },
    { name: 'link high up under unequal heads', rules: ['levels-blow-through'], put: text => set('link', 'depth', '8 mm')(set('bubbler o2-bubbler', 'immersion', '170 mm')(text)) },
    { name: 'the cylinder in a closet', rules: ['cylinder-inventory-vs-room'], only: ['cylinder'], put: text => set('site', 'volume', '6 m3')(set('cylinder', 'place', '"beside the bench"')(text)) },
    { name: 'a bag too large for the room', rules: ['bag-inventory-vs-room'], only: ['bag', 'cylinder'], put: set('site', 'volume', '5 m3') },
    { name: 'a trip bridged', rules: ['bypassed-interlock'], put: text => `${text}override jumper { bypasses: hot-stack   ends-after: none   sort: jumper }\n` },
    { name: 'runs alone without a trip on its warmth', rules: ['unattended-without-guards', 'no-over-temperature-trip'], put: text => set('routine', 'attended', 'no')(removed('hot-stack', 'trip')(text)) },
    { name: 'all the potash at once', rules: ['mixing-heat-boils'], put: text => text.replace(/solute: KOH   strength: [\d.]+ wt%/, 'solute: KOH   strength: 31 wt%   solute-mass: 1.685 kg   water-mass: 3 kg') },
    { name: 'comes back when it has cooled', rules: ['trip-resets-by-itself', 'auto-restart-after-power-cut'], put: text => set('trip hot-stack', 'resets', 'by itself, below 50 °C')(text).replace('latched-by: start-button   ', '') },
    { name: 'a torch for the mixture', rules: ['torch-tip-too-wide', 'torch-two-gases'], only: ['bag', 'cylinder'], put: text => set('burner', 'tip', '3 of 3 mm')(set('burner', 'sort', 'torch-common-duct')(text)) },
    { name: 'nothing sees that the fan runs', rules: ['fan-not-proven'], only: ['cylinder'], put: text => gone('switch fan-flow')(text).replace('needs: fan-flow   stopped-by', 'stopped-by').replace(', fan-flow   with', '   with').replace(', fan-flow   fed-from', '   fed-from').replace(/openings: +.*/, 'openings:         0.004 m2 at 2.5 m, 0.004 m2 at 0.15 m') },
    { name: 'hardly any air', rules: ['ventilation-below-leak'], only: ['cylinder'], put: text => set('fan', 'flow', '6 m3/h')(text).replace(/openings: +.*/, 'openings:         0.004 m2 at 2.5 m, 0.004 m2 at 0.15 m') },
    { name: 'oxygen into the compressor', rules: ['compresses-oxygen-or-mixture', 'part-joins-both-gases'], only: ['cylinder'], put: text => `${text}path oxygen: o2-tee -> suction-tee\n` },
    { name: 'rests for weeks, and nothing looks at the gas', rules: ['no-purge-after-rest'], only: ['bag'], put: text => removed('oxygen-watch', 'analyser')(text).replace(', oxygen-watch.alarm', '').replace(/starts: +1 per day/, 'starts:           0.1 per day').replace('nitrogen purge, ', '') },
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
