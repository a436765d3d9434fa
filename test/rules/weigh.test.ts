import { describe, expect, it } from 'vitest';
import { Analyst } from '../../language/index.js';

const house = 'library "Our workshop"\n\nweigh sealed-room-clock as nothing because "it hangs at the door"\nweigh lead-voltage-drop as error\nweigh supply-below-reversible as hint because "no"\n';
const rig = (more = '') => `rig "In it", built
use "house.rig"
site { place: shed   volume: 24 m3   high-point: 2.4 m   openings: 0.1 m2 at 2.4 m, 0.1 m2 at 0.2 m }
supply { sort: bench   voltage: 28 V   current-limit: 20 A   isolated: yes }
leads { length: 6 m   section: 2.5 mm2 }
stack { cells: 12   wetted: 90 x 110 mm }
path current: supply -> leads -> stack
${more}`;
const told = (text: string) => new Analyst(f => (f.endsWith('house.rig') ? house : text)).analyse('in.rig', { today: '2026-06-15' }).findings.map(f => `${f.severity} ${f.rule}`);

describe('weigh', () => {
    it('in a library holds for every rig that uses it', () => {
        const own = told(rig().replace('use "house.rig"\n', ''));
        expect(own).toContain('warning lead-voltage-drop');
        expect(own).toContain('hint sealed-room-clock');
        const shared = told(rig());
        expect(shared).toContain('error lead-voltage-drop');
        expect(shared.join()).not.toContain('sealed-room-clock');
    });
    it('never makes an error or what guards a life lighter, and says so where it was asked', () => {
        const short = told(rig().replace('voltage: 28 V', 'voltage: 12 V'));
        expect(short).toContain('error supply-below-reversible');
        expect(short).toContain('warning weight-refused');
    });
    it('of one part only', () => {
        expect(told(rig('weigh lead-voltage-drop on stack as hint because "x"\n'))).toContain('error lead-voltage-drop');
        expect(told(rig('weigh lead-voltage-drop on nobody as hint because "x"\n'))).toContain('error unknown-name');
    });
    it('that is not finished, or of no rule, is told', () => {
        expect(told(rig('weigh lead-voltage-drop\n'))).toContain('error unfinished-line');
        expect(told(rig('weigh lead-voltage-drop as heavy\n'))).toContain('error value-not-understood');
        expect(told(rig('weigh no-such-rule as hint\n'))).toContain('error unknown-name');
        expect(told(rig('weigh stack-overheats as hint\n')).join()).not.toContain('permission-unused');
    });
    it('lighter without a reason asks for one', () => {
        const alone = (line: string) => told(rig(line).replace('use "house.rig"\n', ''));
        expect(alone('weigh lead-voltage-drop as hint\n')).toEqual(expect.arrayContaining(['hint lead-voltage-drop', 'hint permission-incomplete']));
        expect(alone('weigh lead-voltage-drop as hint because "short runs"\n').join()).not.toContain('permission-incomplete');
    });
});
