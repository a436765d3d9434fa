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
    /** Written below a rig that has no part of the quantity's kind. */
    readonly add?: string;
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

/** Parts that few rigs have. */
const burner = 'burner { sort: torch-common-duct   flow: 300 L/h   tip: 6 of 0.7 mm }';
const balloon = 'balloon { diameter: 1 m   film: 20 g }\npath hydrogen: cylinder -> balloon';
const engine = 'engine { output: 40 kW   on-board: yes }';
const fuelCell = 'fuel-cell { flow: 65 L/h   efficiency: 45 % }';
const onColumn = 'test { date: 2026-05-02   covers: h2-column   with: nitrogen   pressure: 2 kPa   lasted: 30 min   drop: 0.02 kPa   result: passed }';
const onCylinder = 'test { date: 2026-05-02   covers: cylinder   with: hydrogen   pressure: 3 bar   lasted: 24 h   drop: 0.1 bar   result: passed }';
const film = { 'bag.material': 'latex', 'bag.thickness': '1 mm' } as const;
const seeing = 'reading { date: 2026-05-01   stack.current: 5 A   stack.voltage: 2 V * stack.cells   stack.temperature: 50 °C   stack.hydrogen-rate: 5 NL/h }\nreading older { date: 2026-04-01   stack.current: 5 A   stack.voltage: 2 V * stack.cells   stack.temperature: 50 °C }';

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
    { quantity: 'stack.power', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'stack.bubble-voltage', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'stack.bubble-voltage', input: 'circulation-pump.flow', over: ['0.1 L/min', '1 L/min', '5 L/min', '20 L/min'], goes: 'down', with: { ...driven, 'stack.gap': '2 mm' }, add: 'circulation-pump { side: both   flow: 1 L/min }' },
    { quantity: 'stack.voltage-efficiency', input: 'supply.current-limit', over: amperes, goes: 'down', with: driven },
    { quantity: 'stack.energy-per-volume', input: 'supply.current-limit', over: amperes, goes: 'up', with: { ...driven, 'stack.cells': '1' } },
    { quantity: 'stack.plug-energy-per-volume', input: 'supply.efficiency', over: percents(60, 75, 90, 98), goes: 'down', with: driven },
    { quantity: 'stack.held-voltage', input: 'stack.cells', over: ['2', '4', '8', '12', '20'], goes: 'up' },
    // Readings
    { quantity: 'reading.hydrogen-expected', input: 'reading.stack.current', over: amperes, goes: 'up', with: driven, add: seeing },
    { quantity: 'reading.hydrogen-most', input: 'reading.stack.current', over: amperes, goes: 'up', with: driven, add: seeing },
    { quantity: 'reading.water-expected', input: 'reading.stack.current', over: amperes, goes: 'up', with: driven, add: seeing },
    { quantity: 'reading.hydrogen-off', input: 'reading.stack.hydrogen-rate', over: ['1 NL/h', '5 NL/h', '20 NL/h'], goes: 'up', with: driven, add: seeing },
    { quantity: 'reading.hydrogen-off', input: 'reading.stack.current', over: amperes, goes: 'down', with: driven, add: seeing },
    { quantity: 'reading.volts-before', input: 'reading.stack.temperature', over: ['38 °C', '45 °C', '50 °C', '62 °C'], goes: 'down', with: driven, add: seeing },
    { quantity: 'reading.volts-gained', input: 'reading.stack.voltage', over: ports(u => `${u} V * stack.cells`, 1.8, 2, 2.3), goes: 'up', with: driven, add: seeing },
    // Use
    { quantity: 'burner.flame-power', input: 'burner.flow', over: ['50 L/h', '200 L/h', '600 L/h'], goes: 'up', add: burner },
    { quantity: 'burner.flame-power-condensing', input: 'burner.flow', over: ['50 L/h', '200 L/h', '600 L/h'], goes: 'up', add: burner },
    { quantity: 'burner.tip-speed', input: 'burner.flow', over: ['50 L/h', '200 L/h', '600 L/h'], goes: 'up', add: burner },
    { quantity: 'burner.tip-speed', input: 'burner.tip', over: ports(b => `6 of ${b} mm`, 0.4, 0.7, 1, 1.5), goes: 'down', add: burner },
    { quantity: 'burner.tip-speed', input: 'burner.tip', over: ports(n => `${n} of 0.7 mm`, 1, 3, 6, 12), goes: 'down', add: burner },
    { quantity: 'burner.tip-speed', input: 'site.altitude', over: ['0 m', '500 m', '1500 m', '3000 m'], goes: 'up', add: burner, with: { 'burner.flow': '300 NL/h' } },
    { quantity: 'burner.flame-power', input: 'burner.tip', over: ports(b => `6 of ${b} mm`, 0.4, 1.5), goes: 'nowhere', add: burner },
    { quantity: 'balloon.gas-volume', input: 'balloon.diameter', over: ['0.3 m', '0.6 m', '1 m', '2 m'], goes: 'up', add: balloon },
    { quantity: 'balloon.lift-gross', input: 'balloon.diameter', over: ['0.3 m', '0.6 m', '1 m', '2 m'], goes: 'up', add: balloon },
    { quantity: 'balloon.lift', input: 'balloon.film', over: ['2 g', '10 g', '50 g', '200 g'], goes: 'down', add: balloon },
    { quantity: 'balloon.lift', input: 'site.altitude', over: ['0 m', '500 m', '1500 m', '3000 m'], goes: 'down', add: balloon },
    { quantity: 'balloon.fills', input: 'balloon.diameter', over: ['0.3 m', '0.6 m', '1 m', '2 m'], goes: 'down', add: balloon },
    { quantity: 'balloon.fills', input: 'switch.breaks', over: cutOffs, goes: 'up', add: balloon },
    { quantity: 'engine.shaft-power', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven, add: engine },
    { quantity: 'engine.made-fuel-power', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven, add: engine },
    { quantity: 'fuel-cell.output', input: 'fuel-cell.efficiency', over: percents(25, 40, 55), goes: 'up', add: fuelCell },
    { quantity: 'fuel-cell.fuel-power', input: 'fuel-cell.flow', over: ['20 L/h', '65 L/h', '200 L/h'], goes: 'up', add: fuelCell },
    { quantity: 'fuel-cell.round-trip', input: 'fuel-cell.efficiency', over: percents(25, 40, 55), goes: 'up', with: driven, add: fuelCell },
    // Tests
    { quantity: 'test.may-hide', input: 'test.lasted', over: ['10 min', '30 min', '2 h', '24 h'], goes: 'down', add: onColumn },
    { quantity: 'test.may-hide', input: 'test.drop', over: ['0.01 kPa', '0.05 kPa', '0.2 kPa'], goes: 'up', add: onColumn },
    { quantity: 'test.may-hide', input: 'test.pressure', over: ['1 kPa', '3 kPa', '10 kPa'], goes: 'up', add: onColumn },
    { quantity: 'test.may-hide', input: 'test.temperature', over: ['18..18.2 °C', '18..19 °C', '18..22 °C'], goes: 'up', add: onColumn },
    { quantity: 'test.level-rate', input: 'test.lasted', over: ['10 min', '30 min', '2 h'], goes: 'down', add: onColumn, with: { 'test.level-change': '4 mm' } },
    // Standing idle
    { quantity: 'bag.lost-idle', input: 'bag.thickness', over: millimetres(1, 1.5, 2, 3), goes: 'down', with: film },
    { quantity: 'bag.film-area', input: 'bag.volume', over: ['20 L', '60 L', '120 L', '400 L'], goes: 'up' },
    { quantity: 'bag.lost-per-day', input: 'bag.volume', over: ['20 L', '60 L', '120 L', '400 L'], goes: 'down', with: film },
    { quantity: 'bag.lost-per-day', input: 'bag.size', over: ports(w => `${w} x 900 mm`, 400, 600, 900), goes: 'up', with: film },
    { quantity: 'tube.lost-idle', input: 'tube.length', over: ['0.5 m', '1 m', '2 m', '5 m'], goes: 'up', with: { 'tube.size': '12x2 mm', 'tube.material': 'PVC' } },
    { quantity: 'cylinder.lost-idle', input: 'test.drop', over: ['0.01 bar', '0.1 bar', '0.5 bar'], goes: 'up', add: onCylinder },
    { quantity: 'cylinder.lost-idle', input: 'test.lasted', over: ['1 h', '6 h', '24 h'], goes: 'down', add: onCylinder },
    { quantity: 'column.shrinks-idle', input: 'site.coldest', over: ['-10 °C', '0 °C', '5 °C', '15 °C'], goes: 'down', with: held },
    { quantity: 'column.shrinks-idle', input: 'stack.temperature', over: warmth, goes: 'up', with: driven },
    { quantity: 'battery.charge-idle', input: 'battery.charge', over: percents(40, 60, 80, 100), goes: 'up' },
    { quantity: 'battery.time-to-empty', input: 'battery.capacity', over: ['20 Ah', '60 Ah', '200 Ah'], goes: 'up', with: held },
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
    { quantity: 'compressor.stage-ratio', input: 'compressor.stages', over: ['1', '2', '3'], goes: 'down' },
    { quantity: 'compressor.stage-ratio', input: 'switch.breaks', over: cutOffs, goes: 'up' },
    { quantity: 'compressor.discharge-temperature-adiabatic', input: 'compressor.stages', over: ['1', '2', '3'], goes: 'down' },
    { quantity: 'compressor.discharge-temperature-hot', input: 'compressor.stages', over: ['1', '2', '3'], goes: 'down' },
    { quantity: 'compressor.discharge-temperature-hot', input: 'site.hottest', over: ['20 °C', '25 °C', '30 °C', '38 °C'], goes: 'up' },
    { quantity: 'compressor.discharge-temperature', input: 'compressor.cooling', over: ['0.2', '0.4', '0.7', '1'], goes: 'up' },
    { quantity: 'compressor.interstage-pressure', input: 'switch.breaks', over: cutOffs, goes: 'up', with: { 'compressor.stages': '2' } },
    { quantity: 'compressor.discharge-temperature', input: 'compressor.cooled-to', over: ['5 °C', '20 °C', '40 °C', '60 °C'], goes: 'up', with: { 'compressor.stages': '2' } },
    { quantity: 'compressor.ideal-power', input: 'compressor.stages', over: ['1', '2', '3'], goes: 'nowhere', with: driven },
    { quantity: 'compressor.displacement-flow', input: 'compressor.displacement', over: ['4 cm3', '8 cm3', '16 cm3'], goes: 'up' },
    { quantity: 'compressor.free-delivery', input: 'compressor.leak-back', over: ['0', '0.1', '0.2', '0.4'], goes: 'down' },
    { quantity: 'compressor.free-delivery', input: 'switch.breaks', over: cutOffs, goes: 'down' },
    { quantity: 'compressor.free-delivery-start', input: 'compressor.speed', over: ['1400 rpm', '2900 rpm', '3500 rpm'], goes: 'up' },
    { quantity: 'compressor.water-dropped', input: 'switch.breaks', over: cutOffs, goes: 'up', with: driven },
    { quantity: 'compressor.gas-cooling', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'cylinder.usable-gas', input: 'cylinder.end-pressure', over: ['0 bar', '0.3 bar', '1 bar', '3 bar'], goes: 'down' },
    { quantity: 'cylinder.stored-energy', input: 'cylinder.volume', over: ['5 L', '10 L', '27 L', '50 L'], goes: 'up' },
    { quantity: 'dryer.water-taken', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'bag.starts-per-hour', input: 'bag.volume', over: ['20 L', '60 L', '120 L', '400 L'], goes: 'down', with: driven },
    { quantity: 'bag.inventory-share', input: 'site.volume', over: ['10 m3', '30 m3', '90 m3'], goes: 'down' },
    { quantity: 'column.headspace', input: 'column.level', over: millimetres(120, 160, 200), goes: 'down' },
    { quantity: 'column.head', input: 'bubbler.immersion', over: millimetres(20, 60, 100, 200), goes: 'up', with: driven },
    { quantity: 'tube.speed', input: 'tube.bore', over: millimetres(3, 4, 6, 8, 12), goes: 'down', with: driven },
    { quantity: 'column.outlet-speed', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
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
    { quantity: 'leads.resistance', input: 'leads.length', over: ['0.5 m', '2 m', '5 m'], goes: 'up' },
    { quantity: 'leads.loss', input: 'supply.current-limit', over: amperes, goes: 'up', with: driven },
    { quantity: 'transformer.crest-voltage', input: 'transformer.secondary', over: ['12 V', '24 V', '42 V'], goes: 'up' },
    { quantity: 'rectifier.peak-inverse', input: 'transformer.secondary', over: ['12 V', '24 V', '42 V'], goes: 'up' },
    { quantity: 'lye.molality', input: 'lye.strength', over: strengths, goes: 'up' },
    { quantity: 'lye.heat-capacity', input: 'lye.strength', over: strengths, goes: 'down', with: held },
    { quantity: 'site.ventilation', input: 'fan.flow', over: ['100 m3/h', '300 m3/h', '900 m3/h'], goes: 'up' },
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
