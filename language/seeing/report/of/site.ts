/** Where it stands and how it is run, as the text says. */
import type { View } from '../../../quantities/view.js';
import { defineSection, spaced, words } from '../define.js';
import type { Row } from '../page.js';

/** Words of the language that a stranger would not know. */
const plainer: Readonly<Record<string, string>> = {
    sort: 'the gas is for', audience: 'who is near', rcd: 'residual current device', breaker: 'breaker of the circuit', 'dc-earthed': 'pole of the stack tied to earth', bonded: 'wired to earth', carried: 'filled vessels go by car',
    pockets: 'pockets under the roof', 'boxes-over-gas': 'boxes in which gas can gather', 'high-zone-fittings': 'electrical things high up', combustibles: 'what burns well near by', 'oxygen-cylinders': 'oxygen kept near by', neighbours: 'the next place with others',
    'spent-lye': 'used lye goes to', plan: 'upkeep', law: 'whose law holds', steps: 'steps of a run', attended: 'somebody stands by', 'fire-card': 'card for the fire brigade',
};
export default defineSection({
    name: 'site', title: 'Job and site', order: 30, lead: 'Where the rig stands and how it is run, in the words of its description: compare it with what you see.',
    make: ({ workings }) => {
        const rows: Row[] = [];
        const group = (title: string, v: View | undefined) => {
            const said = [...v?.part.entries.values() ?? []].filter(e => e.value?.text.trim());
            if (said.length) rows.push({ group: title }, ...said.map(e => [plainer[e.key] ?? spaced(e.key), e.value!.text.trim()]));
        };
        group('The job', workings.partsOf('purpose')[0]);
        group('How it is run', workings.partsOf('routine')[0]);
        group('The place', workings.partsOf('site')[0]);
        return rows.length ? [{ is: 'table', head: ['what', 'as described'], rows, narrow: true }] : [words('Nothing is said of the job, the place or how it is run. How far a leak can go before it burns depends on the place: ask for it.')];
    },
});
