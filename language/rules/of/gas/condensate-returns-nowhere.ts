import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'condensate-returns-nowhere',
    family: 'gas conditioning',
    severity: 'hint',
    summary: 'A cooler in the gas line drops water, and nothing takes it.',
    why: 'It fills the next low point, holds the gas back in surges, and in frost it shuts the line.',
    source: 'Dalton; vapour over lye, Balej 1985',
    on: 'cooler',
    check(v, tell) {
        for (const gas of ['hydrogen', 'oxygen'] as const) {
            const next = v.paths.from(v.name, gas);
            if (!next.length) continue;
            const takes = (name: string) => {
                const p = v.other(name);
                return p?.kind === 'trap' ? p.word('sort') !== 'reverse' : p?.kind === 'tee' || p?.kind === 'scrubber' || p?.kind === 'bubbler';
            };
            // A tee may lead the water down; a wash bottle takes it in.
            if (next.some(l => takes(l.to.name))) continue;
            const drops = v.maybeQ('water-caught');
            if (drops === 0) continue;
            tell({
                at: next[0].span,
                message: `${drops > 0 ? `About ${show(drops, 'g/h', 2)} of water drop` : 'Water drops'} out of the ${gas} in ${v.name}, and no trap or wash bottle comes behind it.`,
            });
        }
    },
});
