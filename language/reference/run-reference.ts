/** What a run does, counts as a hazard, follows and leaves out: the page that `explain run` and `explain faults` show. */
import { followedFailures } from '../run/faults.js';
import { hazards } from '../run/watches.js';
import { notInRuns } from './run-pages.js';

export function runReference(title: 'run' | 'faults' = 'run'): string {
    return [
        `# ${title}`,
        'A run follows the rig by the clock. The lye warms and cools by the laws at rest; bag or bell, store, battery, dryer, levels and the air of the room fill and empty, each gas by itself; sun shines on panels and on a cylinder that stands in it; switches, trips, relays, contactors, timers, valves and buttons do what their lines say. Each thing happens at its moment. A usual day presses every start button at 08:00, adds water as the routine says and lasts 24 h; a `scenario` says its own. `rigwright run`, `rigwright faults`, and the commands of the same sense in the editor.',
        'To see what breaks, one part after the other fails ten minutes after the start, on the hottest day of the site, the rig warm and its store half full; then each guard is taken away in turn. A failure that nothing shows is run again beside each second one in which that part has something to do: where it switched, acted, or gas passed it; a hazard that neither reaches alone within eight hours is told, with how often such a part is usually tested (common practice, no source). A part that starts to fail stays failed; a flat bag follows its leak within some seconds. A leak is a hole of 1 mm, a torn separator a hole of 0.5 mm; a set point that drifts acts a tenth later (10 K), a device that reads low shows half, one that reads high twice what there is, a dead or poisoned one nothing.',
        '## What counts as a hazard',
        Object.values(hazards).map(h => `- ${h}`).join('\n'),
        '## Failures that are followed',
        Object.entries(followedFailures).map(([kind, ways]) => `- ${kind}: ${ways.join(', ')}`).join('\n'),
        'Every other way to fail of a rig is listed with its result.',
        '## Left out',
        notInRuns.map(n => `- ${n}`).join('\n'),
    ].join('\n\n');
}
