/**
 * What can be sensed of a part or read off it at one moment, beside what the text gives and what is worked out: the
 * pressure in a tee, the oxygen in a wash bottle, the starts of a compressor. Names after the point in `senses:`,
 * readings, logs, events and expectations over time.
 */
import type { MeasureName } from '../units/dimension.js';

export const momentary: ReadonlyMap<string, { readonly measure: MeasureName; readonly doc: string }> = new Map(Object.entries({
    pressure: { measure: 'pressure', doc: 'Pressure above the air outside, at this place.' },
    head: { measure: 'pressure', doc: 'Pressure of the gas above the air outside.' },
    temperature: { measure: 'temperature', doc: 'Temperature at this place.' },
    'discharge-temperature': { measure: 'temperature', doc: 'Temperature of the gas that leaves.' },
    'shell-temperature': { measure: 'temperature', doc: 'Temperature of the outside of the shell.' },
    level: { measure: 'length', doc: 'Height of the liquid above the foot.' },
    volume: { measure: 'volume', doc: 'Gas in it at this moment.' },
    flow: { measure: 'flow', doc: 'Flow through it at this moment.' },
    current: { measure: 'current', doc: 'Current through it.' },
    voltage: { measure: 'voltage', doc: 'Voltage across it.' },
    power: { measure: 'power', doc: 'Power at this moment.' },
    energy: { measure: 'energy', doc: 'Energy counted so far.' },
    hydrogen: { measure: 'fraction', doc: 'Hydrogen in the gas or the air there.' },
    oxygen: { measure: 'fraction', doc: 'Oxygen in the gas or the air there.' },
    starts: { measure: 'number', doc: 'How often it has started.' },
    hours: { measure: 'time', doc: 'Hours that it has run.' },
    charge: { measure: 'fraction', doc: 'How full a battery is.' },
    weight: { measure: 'mass', doc: 'What it weighs.' },
    strength: { measure: 'mass-fraction', doc: 'Strength of the lye.' },
    humidity: { measure: 'fraction', doc: 'Relative humidity.' },
    sun: { measure: 'irradiance', doc: 'Sunshine on an area.' },
    'lowest-voltage': { measure: 'voltage', doc: 'Lowest voltage so far.' },
} as const));
