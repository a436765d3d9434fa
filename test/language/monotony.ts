/**
 * Which way a number goes when one thing is turned up, with all else as described: declared once, held by monotony.test.ts on
 * examples and random rigs. A new quantity gets a row here as soon as its direction is beyond doubt.
 */
export interface Trend {
    /** Of the first part of a kind: 'stack.current'. */
    readonly quantity: string;
    /** A property of the first part of a kind, and what it is set to, rising, over its usual range. */
    readonly input: string;
    readonly over: readonly string[];
    readonly goes: 'up' | 'down' | 'nowhere';
    /** Set before, so that nothing else moves: fixed temperature, a source that gives the current. */
    readonly with?: Readonly<Record<string, string>>;
}
const held = { 'stack.temperature': '55 °C' } as const;
/** A source with volts to spare and a stated current: the current is what the limit says. */
const driven = { ...held, 'supply.voltage': '4 V * stack.cells', 'supply.current-limit': '8 A' } as const;
const amperes = ['3 A', '6 A', '9 A', '14 A', '20 A'];
const warmth = ['20 °C', '35 °C', '50 °C', '65 °C', '80 °C'];
const cutOffs = ['above 4 bar', 'above 6 bar', 'above 9 bar', 'above 13 bar', 'above 17 bar'];
const percents = (...list: number[]) => list.map(p => `${p} %`);
const millimetres = (...list: number[]) => list.map(m => `${m} mm`);
const ports = (of: (n: number) => string, ...list: number[]) => list.map(of);
const bores = ports(b => `1 of ${b} mm, 60 mm long`, 2, 3, 4, 6, 8);
const lengths = ports(l => `1 of 5 mm, ${l} mm long`, 10, 30, 60, 120, 200);
const channels = ports(b => `internal, PP, ${b} mm`, 8, 12, 16, 20, 25);
const strengths = ports(w => `${w} wt%`, 10, 16, 22, 28, 34);

export const trends: readonly Trend[] = [
    // Electrochemistry
    { quantity: 'stack.reversible-voltage', input: 'stack.temperature', over: warmth, goes: 'down' },
    { quantity: 'stack.thermoneutral-voltage', input: 'stack.temperature', over: warmth, goes: 'down' },
    { quantity: 'stack.enthalpy-voltage', input: 'stack.temperature', over: warmth, goes: 'up' },
    { quantity: 'stack.rest-voltage', input: 'stack.temperature', over: warmth, goes: 'down', with: driven },
    { quantity: 'stack.volts-per-cell', input: 'stack.temperature', over: warmth, goes: 'down', with: driven },
    { quantity: 'stack.volts-per-cell', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'stack.anode-overvoltage', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'stack.cathode-overvoltage', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'stack.ohmic-voltage', input: 'stack.gap', over: millimetres(1, 2, 3, 4, 6), goes: 'up', with: driven },
    { quantity: 'stack.ohmic-voltage', input: 'separator.thickness', over: millimetres(0.3, 0.5, 1, 1.5, 2), goes: 'up', with: driven },
    { quantity: 'stack.void-fraction', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'stack.current', input: 'supply.voltage', over: ports(u => `${u} V * stack.cells`, 1.4, 1.7, 2, 2.4, 3), goes: 'up', with: held },
    { quantity: 'stack.current', input: 'leads.length', over: ['0.5 m', '2 m', '5 m', '10 m'], goes: 'down', with: { ...held, 'supply.voltage': '1.9 V * stack.cells', 'supply.current-limit': '200 A' } },
    { quantity: 'stack.voltage', input: 'stack.cells', over: ['2', '4', '8', '12', '20'], goes: 'up', with: driven },
    { quantity: 'stack.current-density', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'stack.efficiency-hhv', input: 'stack.gap', over: millimetres(3, 4, 6, 8, 10), goes: 'down', with: { ...driven, 'stack.cells': '1' } },
    { quantity: 'stack.reversible-voltage', input: 'stack.cells', over: ['2', '6', '20'], goes: 'nowhere', with: held },
    // Bypass
    { quantity: 'stack.bypass-share', input: 'stack.port', over: bores, goes: 'up', with: driven },
    { quantity: 'stack.bypass-share', input: 'stack.port', over: lengths, goes: 'down', with: driven },
    { quantity: 'stack.bypass-share', input: 'stack.manifold', over: channels, goes: 'up', with: driven },
    { quantity: 'stack.bypass-share', input: 'stack.cells', over: ['2', '4', '8', '12', '20'], goes: 'up', with: driven },
    { quantity: 'stack.bypass-share', input: 'supply.current-limit', over: amperes, goes: 'down', with: driven },
    { quantity: 'stack.bypass-share-low', input: 'stack.port', over: lengths, goes: 'down', with: driven },
    { quantity: 'stack.bypass-current', input: 'stack.port', over: lengths, goes: 'down', with: driven },
    { quantity: 'stack.worst-cell-current', input: 'stack.port', over: lengths, goes: 'up', with: driven },
    { quantity: 'stack.port-resistance', input: 'stack.port', over: bores, goes: 'down', with: driven },
    { quantity: 'stack.port-resistance', input: 'stack.temperature', over: warmth, goes: 'down', with: driven },
    // Gas line
    { quantity: 'bubbler.water-caught', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'bubbler.sucked-back', input: 'column.bore', over: millimetres(50, 70, 90, 120), goes: 'up', with: driven },
    { quantity: 'tube.seepage', input: 'tube.length', over: ['0.5 m', '1 m', '2 m', '5 m'], goes: 'up', with: { 'tube.size': '12x2 mm', 'tube.material': 'PVC' } },
    // Lye
    { quantity: 'lye.conductivity', input: 'stack.temperature', over: warmth, goes: 'up', with: driven },
    { quantity: 'lye.density', input: 'lye.strength', over: strengths, goes: 'up', with: held },
    { quantity: 'lye.vapour-pressure', input: 'lye.strength', over: strengths, goes: 'down', with: held },
    { quantity: 'lye.vapour-pressure', input: 'stack.temperature', over: warmth, goes: 'up', with: driven },
    { quantity: 'lye.viscosity', input: 'stack.temperature', over: warmth, goes: 'down', with: driven },
    { quantity: 'lye.boiling-point', input: 'lye.strength', over: strengths, goes: 'up' },
    { quantity: 'lye.boiling-point', input: 'site.altitude', over: ['0 m', '500 m', '1500 m', '3000 m'], goes: 'down' },
    { quantity: 'stack.lye-needed', input: 'stack.gap', over: millimetres(1, 2, 3, 4, 6), goes: 'up' },
    // Heat
    { quantity: 'stack.steady-temperature', input: 'site.hottest', over: ['20 °C', '25 °C', '30 °C', '38 °C'], goes: 'up', with: { 'supply.voltage': '4 V * stack.cells', 'supply.current-limit': '8 A' } },
    // One cell: where much bypasses the cells, more current makes more gas, whose vapour cools.
    { quantity: 'stack.steady-temperature', input: 'supply.current-limit', over: amperes, goes: 'up', with: { 'stack.cells': '1', 'supply.voltage': '4 V' } },
    { quantity: 'stack.steady-temperature', input: 'stack.heat-loss', over: ['1 W/K', '2 W/K', '5 W/K', '10 W/K', '20 W/K'], goes: 'down', with: { 'supply.voltage': '4 V * stack.cells', 'supply.current-limit': '8 A' } },
    { quantity: 'stack.heat', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'stack.time-constant', input: 'stack.heat-capacity', over: ['5 kJ/K', '20 kJ/K', '80 kJ/K'], goes: 'up', with: driven },
    { quantity: 'stack.time-constant', input: 'stack.heat-loss', over: ['1 W/K', '5 W/K', '20 W/K'], goes: 'down', with: driven },
    { quantity: 'stack.surface-loss', input: 'stack.temperature', over: warmth.slice(1), goes: 'up', with: driven },
    // Gas and water
    { quantity: 'stack.hydrogen-rate', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'stack.hydrogen-rate', input: 'stack.port', over: lengths, goes: 'up', with: driven },
    { quantity: 'stack.water-use', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'stack.vapour-loss', input: 'stack.temperature', over: warmth, goes: 'up', with: { ...driven, 'stack.cells': '1' } },
    { quantity: 'stack.hydrogen-rate-wet', input: 'stack.temperature', over: warmth, goes: 'up', with: { ...driven, 'stack.cells': '1' } },
    { quantity: 'stack.hydrogen-in-oxygen', input: 'supply.current-limit', over: amperes, goes: 'down', with: driven },
    { quantity: 'stack.oxygen-in-hydrogen', input: 'supply.current-limit', over: amperes, goes: 'down', with: driven },
    { quantity: 'stack.crossover-share', input: 'separator.thickness', over: millimetres(0.3, 0.5, 1, 2), goes: 'down', with: driven },
    { quantity: 'bubbler.head', input: 'bubbler.immersion', over: millimetres(20, 60, 100, 200), goes: 'up' },
    { quantity: 'tube.drop', input: 'tube.bore', over: millimetres(3, 4, 6, 8, 12), goes: 'down' },
    { quantity: 'tube.drop', input: 'tube.length', over: ['0.5 m', '1 m', '3 m', '10 m'], goes: 'up' },
    { quantity: 'column.level-fall', input: 'column.bore', over: millimetres(40, 60, 90, 160), goes: 'down', with: driven },
    { quantity: 'separator.pore-limit', input: 'separator.largest-pore', over: ['5 um', '10 um', '40 um'], goes: 'down' },
    { quantity: 'stack.hydrogen-rate', input: 'budget.tariff', over: ['0.1 EUR/kWh', '0.6 EUR/kWh'], goes: 'nowhere' },
    // Compression and storage
    { quantity: 'compressor.pressure-ratio', input: 'switch.breaks', over: cutOffs, goes: 'up' },
    { quantity: 'compressor.discharge-temperature', input: 'switch.breaks', over: cutOffs, goes: 'up' },
    { quantity: 'compressor.ideal-power', input: 'switch.breaks', over: cutOffs, goes: 'up', with: driven },
    { quantity: 'compressor.volumetric-efficiency', input: 'switch.breaks', over: cutOffs, goes: 'down' },
    { quantity: 'compressor.volumetric-efficiency', input: 'compressor.clearance', over: percents(2, 4, 6, 9, 12), goes: 'down' },
    { quantity: 'compressor.stall-pressure', input: 'compressor.clearance', over: percents(2, 4, 6, 9, 12), goes: 'down' },
    { quantity: 'compressor.volumetric-efficiency', input: 'compressor.stages', over: ['1', '2', '3'], goes: 'up' },
    { quantity: 'compressor.discharge-temperature', input: 'compressor.stages', over: ['1', '2', '3'], goes: 'down' },
    { quantity: 'compressor.stall-pressure', input: 'compressor.stages', over: ['1', '2', '3'], goes: 'up' },
    { quantity: 'compressor.free-delivery', input: 'compressor.displacement', over: ['4 cm3', '8 cm3', '16 cm3'], goes: 'up' },
    { quantity: 'compressor.duty', input: 'compressor.displacement', over: ['4 cm3', '8 cm3', '16 cm3'], goes: 'down', with: driven },
    { quantity: 'compressor.energy-per-volume', input: 'compressor.power', over: ['100 W', '200 W', '400 W'], goes: 'up', with: driven },
    { quantity: 'cylinder.stored-gas', input: 'cylinder.volume', over: ['5 L', '10 L', '27 L', '50 L'], goes: 'up' },
    { quantity: 'cylinder.stored-gas', input: 'switch.breaks', over: cutOffs, goes: 'up' },
    { quantity: 'cylinder.burst-energy', input: 'switch.breaks', over: cutOffs, goes: 'up' },
    { quantity: 'cylinder.pressure-hot', input: 'site.hottest', over: ['20 °C', '30 °C', '40 °C', '55 °C'], goes: 'up' },
    { quantity: 'cylinder.fill-time', input: 'cylinder.volume', over: ['5 L', '10 L', '27 L', '50 L'], goes: 'up', with: driven },
    { quantity: 'cylinder.fill-time', input: 'supply.current-limit', over: amperes, goes: 'down', with: driven },
    { quantity: 'cylinder.pressure-filled-cold', input: 'site.coldest', over: ['-20 °C', '-5 °C', '5 °C', '15 °C'], goes: 'down' },
    { quantity: 'cylinder.pressure-empty-cold', input: 'cylinder.end-pressure', over: ['0 bar', '0.3 bar', '1 bar', '3 bar'], goes: 'up' },
    { quantity: 'compressor.running-power-least', input: 'compressor.displacement', over: ['4 cm3', '8 cm3', '16 cm3'], goes: 'up' },
    { quantity: 'relief-valve.inlet-loss', input: 'relief-valve.inlet', over: [6, 10, 16, 25].map(b => `${b} mm bore, 0.3 m long`), goes: 'down' },
    { quantity: 'bag.lost-per-day', input: 'bag.thickness', over: millimetres(0.05, 0.1, 0.2, 0.5), goes: 'down' },
    { quantity: 'bag.volume-hot', input: 'site.hottest', over: ['20 °C', '30 °C', '40 °C', '55 °C'], goes: 'up' },
    { quantity: 'cylinder.inventory-share', input: 'site.volume', over: ['10 m3', '30 m3', '90 m3'], goes: 'down' },
    { quantity: 'relief-valve.capacity-hydrogen', input: 'relief-valve.orifice', over: millimetres(1, 2, 4, 6), goes: 'up' },
    { quantity: 'bag.fill-time', input: 'bag.volume', over: ['20 L', '60 L', '120 L', '400 L'], goes: 'up', with: driven },
    { quantity: 'dryer.hours-to-full', input: 'dryer.mass', over: ['200 g', '500 g', '1 kg'], goes: 'up', with: driven },
    // Supply
    { quantity: 'leads.drop', input: 'leads.length', over: ['0.5 m', '2 m', '5 m'], goes: 'up', with: driven },
    { quantity: 'leads.drop', input: 'leads.section', over: ['2.5 mm2', '4 mm2', '10 mm2', '25 mm2'], goes: 'down', with: driven },
    { quantity: 'leads.ampacity', input: 'leads.section', over: ['2.5 mm2', '4 mm2', '10 mm2', '25 mm2'], goes: 'up' },
    { quantity: 'supply.working-voltage', input: 'leads.length', over: ['0.5 m', '2 m', '5 m'], goes: 'up', with: driven },
    { quantity: 'stack.plug-power', input: 'supply.efficiency', over: percents(60, 75, 90, 98), goes: 'down', with: driven },
    { quantity: 'fuse.load-share', input: 'fuse.rating', over: ['10 A', '16 A', '40 A'], goes: 'down', with: driven },
    { quantity: 'rectifier.junction-temperature', input: 'rectifier.sink', over: ['0.5 K/W', '1.5 K/W', '4 K/W'], goes: 'up' },
    { quantity: 'capacitor.energy', input: 'capacitor.capacitance', over: ['1 mF', '10 mF', '40 mF'], goes: 'up' },
    { quantity: 'capacitor.discharge-time', input: 'capacitor.bleed', over: ['100 ohm', '470 ohm', '2000 ohm'], goes: 'up' },
    // Room
    { quantity: 'site.air-pressure', input: 'site.altitude', over: ['0 m', '500 m', '1500 m', '3000 m'], goes: 'down' },
    { quantity: 'site.room-clock', input: 'site.volume', over: ['10 m3', '30 m3', '90 m3'], goes: 'up', with: driven },
    { quantity: 'site.room-clock', input: 'supply.current-limit', over: amperes, goes: 'down', with: driven },
    { quantity: 'site.oxygen-clock', input: 'site.volume', over: ['10 m3', '30 m3', '90 m3'], goes: 'up', with: driven },
    { quantity: 'site.leak-share', input: 'fan.flow', over: ['100 m3/h', '300 m3/h', '900 m3/h'], goes: 'down', with: driven },
    { quantity: 'site.passive-flow', input: 'site.free-area', over: percents(20, 50, 90), goes: 'up' },
    // Money
    { quantity: 'budget.electricity-cost', input: 'budget.tariff', over: ['0.1 EUR/kWh', '0.3 EUR/kWh', '0.6 EUR/kWh'], goes: 'up', with: driven },
    { quantity: 'budget.parts-cost', input: 'budget.life', over: ['500 h', '2000 h', '8000 h'], goes: 'down', with: driven },
    { quantity: 'budget.gas-cost', input: 'budget.other', over: ['50 EUR', '400 EUR', '2000 EUR'], goes: 'up', with: driven },
];
