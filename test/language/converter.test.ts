/** On the two sides of a converter volts and amperes differ; power does not, but for its loss. Worked by hand. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';

const rig = (path: string, more = '') => `rig "Converter", drawn

battery block { sort: LFP   capacity: 100 Ah   voltage: 12.8 V   internal-resistance: 10 mohm }
fuse before { rating: 40 A   dc-rating: 58 V }
fuse behind { rating: 40 A   dc-rating: 58 V }
leads thick { length: 1 m   section: 16 mm2 }
supply converter { sort: converter   voltage: 30 V   current-limit: 12 A   efficiency: 90 % }
stack { cells: 13   wetted: 80 x 100 mm }
path current: ${path}
${more}`;
const numbers = (text: string) => {
    const { rig: r, workings } = analyseText(text);
    return (part: string, name: string) => workings.quantity(r.parts.get(part)!, name)!.value;
};

describe('a converter that runs from a battery', () => {
    const n = numbers(rig('block -> before -> thick -> converter -> behind -> stack'));
    const given = n('converter', 'working-voltage') * n('stack', 'current');
    // Balance of power: what it gives, over its efficiency, over the volts of the battery.
    const drawn = given / 0.9 / 12.8;
    it('draws more amperes than it gives where it steps up', () => {
        expect(n('stack', 'current')).toBeCloseTo(12, 6);
        expect(drawn).toBeGreaterThan(24);
        expect(n('block', 'working-current')).toBeCloseTo(drawn, 6);
    });
    it('a fuse is loaded by the current of its own side', () => {
        expect(n('before', 'load-share')).toBeCloseTo(drawn / 40, 6);
        expect(n('behind', 'load-share')).toBeCloseTo(12 / 40, 6);
    });
    it('leads before it drop volts of the battery, and none of the stack', () => {
        expect(n('thick', 'drop')).toBeCloseTo(n('thick', 'resistance') * drawn, 9);
        expect(n('converter', 'working-voltage')).toBeCloseTo(n('stack', 'voltage'), 9);
        const late = numbers(rig('block -> before -> converter -> behind -> thick -> stack'));
        expect(late('converter', 'working-voltage') - late('stack', 'voltage')).toBeCloseTo(12 * late('thick', 'resistance'), 6);
    });
    it('the battery works at its own volts less its droop', () => {
        expect(n('block', 'working-voltage')).toBeCloseTo(12.8 - 0.01 * drawn, 6);
    });
    it('a fuse that stands on no path is loaded by nobody knows what', () => {
        expect(numbers(rig('block -> converter -> stack'))('before', 'load-share')).toBeNaN();
    });
});

it('a battery without converter gives what the stack takes', () => {
    const n = numbers('rig "Straight", drawn\n\nbattery block { sort: LFP   capacity: 100 Ah   voltage: 25.6 V }\nfuse { rating: 40 A }\nstack { cells: 12   wetted: 80 x 100 mm }\npath current: block -> fuse -> stack\n');
    expect(n('block', 'working-current')).toBeCloseTo(n('stack', 'current'), 9);
    expect(n('fuse', 'load-share')).toBeCloseTo(n('stack', 'current') / 40, 9);
});
