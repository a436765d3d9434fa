/** One thing broken after the other. Never left out, whatever else a copy leaves out. */
import { alikeEnds, faultGroups, healthyHazards, outcomeText } from '../../../reference/run-text.js';
import type { Fault } from '../../../run/faults.js';
import { defineSection, heading, list, words } from '../define.js';
import type { Block } from '../page.js';

export default defineSection({
    name: 'broken', title: 'What if one thing breaks', order: 130, page: 'own',
    lead: 'Every single failure that can be followed, on the hottest day, ten minutes after the start of a warm rig with its store half full: what comes of it, how soon, and what stops it.',
    make: ({ faults, hidden }) => {
        if (typeof faults === 'string') return [words(faults, 'strong')];
        const usual = healthyHazards(faults);
        return [
            ...(usual.length ? [heading('With nothing broken'), ...list(usual)] : []),
            ...faultGroups(faults).flatMap(({ title, faults: group }): Block[] => [
                heading(`${title} (${group.length})`),
                ...(group[0].outcome === 'stops' || group[0].outcome === 'unseen'
                    ? [words(`${byPart(group)}.`)]
                    : list(alikeEnds(group).map(({ names, fault, story }) => [`${names}: ${outcomeText(fault)}.`, fault.outcome === 'hazard' && story.length ? `On the way: ${story.join('; ')}.` : '', fault.help ? `What would help: ${fault.help}.` : '']))),
            ]),
            ...(faults.left.length ? [heading(`Ways to fail that nothing here follows (${faults.left.length})`), words(`Not followed is not harmless: ${faults.left.join(', ')}.`)] : []),
            words(`A leak is taken as a hole of 1 mm. Two failures at once can do more, and a failure that nothing shows waits for the second one: rigwright faults follows those.${hidden.size ? ' Parts that this copy does not describe are named here all the same.' : ''}`, 'quiet'),
        ];
    },
});
/** 'power stops or runs away; main-fuse blows'. */
function byPart(faults: readonly Fault[]): string {
    const ways = new Map<string, string[]>();
    for (const { part, what } of faults) ways.set(part, [...(ways.get(part) ?? []), what]);
    return [...ways].map(([part, whats]) => `${part} ${whats.join(' or ')}`).join('; ');
}
