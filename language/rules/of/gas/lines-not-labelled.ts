import { show } from '../../../units/format.js';
import { tubeBore } from '../../../quantities/heads.js';
import { defineRule } from '../../define.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'lines-not-labelled',
    family: 'gas conditioning',
    severity: 'hint',
    summary: 'A hydrogen hose and an oxygen hose can be taken for each other.',
    why: 'After a service they change places, and each store fills with the other gas.',
    source: 'common practice, no source; words on the line: ISO 20560-1, from memory',
    from: 'built',
    on: 'rig',
    check(v, tell) {
        const tubes = v.all('tube');
        const hydrogen = tubes.filter(t => only(t, 'hydrogen'));
        const oxygen = tubes.filter(t => only(t, 'oxygen'));
        for (const h of hydrogen) {
            for (const o of oxygen) {
                const [mine, theirs] = [labelOf(h), labelOf(o)];
                if (mine && theirs && mine.toLowerCase() !== theirs.toLowerCase()) continue;
                // One hose alone with a name tells both apart, and so does a hose that fits nowhere else.
                const same = !!mine && !!theirs;
                if (!same && (mine || theirs)) continue;
                const bore = tubeBore(h);
                if (!(Math.abs(bore - tubeBore(o)) < 5e-4)) continue;
                tell({
                    at: h.at(same ? 'label' : undefined), severity: same ? 'warning' : 'hint', related: [{ span: o.at(same ? 'label' : undefined), message: 'and this one' }],
                    message: same
                        ? `${h.name} for hydrogen and ${o.name} for oxygen bear the same label, "${mine}".`
                        : `${h.name} for hydrogen and ${o.name} for oxygen are both ${show(bore, 'mm')} wide, and neither says what is in it.`,
                });
                return;
            }
        }
    },
});

const only = (t: View, gas: 'hydrogen' | 'oxygen') => {
    const media = t.paths.mediaOf(t.name);
    return media.size === 1 && media.has(gas);
};
const labelOf = (t: View) => t.given('label').facts.get('')?.text ?? '';
