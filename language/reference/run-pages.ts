/** A run, and what can fail, as pages of Markdown. */
import { duration, show } from '../units/format.js';
import type { Faults } from '../run/faults.js';
import type { RunResult } from '../run/run.js';
import type { Workings } from '../quantities/workings.js';
import { caution } from './caution.js';
import { heldIn } from '../run/expectations.js';
import { alikeEnds, clockOf, faultGroups, GUARDS_TESTED, guardText, happenedText, healthyHazards, heldText, HIDDEN_TITLE, hiddenText, outcomeText, totalsOf, trialText, worthTelling } from './run-text.js';

const cell = (text: string) => text.replace(/\|/g, '\\|');

/** What a run does not know, whatever the rig: told with every result. */
export const notInRuns = [
    'Gas in the bag stands at the temperature of the air, gas in a cylinder at that of its steel; what the compressor heats is not followed.',
    'The small gas spaces over the lye follow at once: what leaves the stack is as pure as its current makes it, and little current makes impure gas.',
    'Levels move with water and heads; foam, and what lye does once it has left with the gas, do not exist here.',
    'Of the small volumes between valves only that between a compressor and its check valve is followed; a shell at the suction, a smoothing capacitor and the time that a valve takes to move are left out.',
    'The air of a room is two layers, an upper third and the rest; wind and corners are not followed.',
    'A clear sky: no clouds pass but those that a scenario tells.',
] as const;
const limits = (notes: readonly string[]) => ['## Left out of a run', '', ...[...notes, ...notInRuns].map(n => `* ${n}`), ''];

export function runPage(r: RunResult, workings: Workings, title: string): string {
    const held = heldIn(workings, r);
    const { starts, name, weather } = r.scenario;
    const told = r.events.filter(worthTelling);
    const out = [`# ${title}: ${name ?? 'a usual day'}`, '', `From ${clockOf(starts, 0).slice(0, 5)}, ${show(weather(0), '°C')} at the start.`, ''];
    if (r.ended.early) out.push(`**It ends after ${duration(r.ended.t)}**: ${r.ended.early}.`, '');
    if (told.length) out.push('| when | what happens |', '|---|---|', ...told.map(e => `| ${clockOf(starts, e.t)} | ${e.sort === 'hazard' ? '**Hazard:** ' : ''}${cell(happenedText(e))} |`), '');
    else out.push('Nothing happens that a run would tell.', '');
    out.push(`## After ${duration(r.ended.t)}`, '', '| number | value |', '|---|--:|', ...totalsOf(r, workings).map(t => `| ${cell(t.name)} | ${cell(t.value)} |`), '');
    if (held.length) out.push('## Expected', '', ...held.map(h => `* ${heldText(h, starts)}`), '');
    return [...out, ...limits(r.notes), caution, ''].join('\n');
}
export function faultsPage(found: Faults, workings: Workings, title: string): string {
    const out = [`# ${title}: one thing broken`, '', 'One part fails at a time, ten minutes after the start, on the hottest day, rig warm and store half full; a leak is a hole of 1 mm. Of two at once only those are tried of which nothing shows the first: others can do more.', ''];
    for (const text of healthyHazards(found)) out.push(`**${text}.**`, '');
    for (const { title: head, faults } of faultGroups(found)) {
        out.push(`## ${head}`, '');
        if (faults[0].outcome === 'unseen' || faults[0].outcome === 'stops') out.push(`${faults.map(f => `${f.part} *${f.what}*`).join(', ')}.`, '');
        else for (const { names, fault, story } of alikeEnds(faults)) {
            out.push(`* **${names}**: ${outcomeText(fault)}.`);
            if (fault.outcome === 'hazard') out.push(...story.map(s => `  * ${s}`));
            if (fault.help) out.push(`  * What would help: ${fault.help}.`);
        }
        out.push('');
    }
    if (found.hidden.length) {
        out.push(`## ${HIDDEN_TITLE}`, '');
        for (const h of found.hidden) out.push(`* ${hiddenText(h)}.`, `  * ${trialText(h, workings.viewOf(h.part)?.kind ?? '')}`);
        out.push('');
    }
    if (found.guards.length) out.push('## What each guard is good for', '', GUARDS_TESTED, '', '| guard | without it |', '|---|---|', ...found.guards.map(g => `| ${g.name} | ${cell(guardText(g).replace(/^without it /, ''))} |`), '');
    if (found.left.length) out.push('## Ways to fail that no run follows', '', `${found.left.join(', ')}.`, '');
    return [...out, ...limits(found.notes), caution, ''].join('\n');
}
