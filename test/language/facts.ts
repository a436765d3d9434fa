/** What a text says, as flat facts to compare: `stack.cells` -> `12`, `path 1` -> `hydrogen: stack > bag`. */
import { Analyst } from '../../language/index.js';
import type { Page } from '../../language/rig/rig.js';

export function pageOf(text: string): Page {
    return new Analyst(() => text).page('a.rig')!;
}
const squeeze = (s: string) => s.replace(/#.*$/gm, '').replace(/\s+/g, '');

export function factsOf(text: string): Map<string, string> {
    const page = pageOf(text);
    const facts = new Map<string, string>();
    if (page.title) facts.set('title', page.title.text);
    if (page.stage) facts.set('stage', page.stage.word);
    for (const p of page.parts) {
        facts.set(`part ${p.name}`, `${p.kindWord}${p.base ? ` like ${p.base.name}` : ''}`);
        for (const e of p.entries.values()) facts.set(`${p.name}.${e.key}`, squeeze(text.slice(e.span.start, e.span.end)));
    }
    for (const l of page.lets) facts.set(`let ${l.name}`, l.value ? squeeze(l.value.text) : '');
    for (const p of page.paths) facts.set(`path ${p.medium} ${p.stops[0]?.name} ${p.stops.at(-1)?.name}`, p.stops.map(s => s.name).join('>'));
    for (const e of page.expects) facts.set(`expect ${squeeze(e.text)}`, '');
    for (const u of page.uses) facts.set(`use ${u.target}`, '');
    for (const a of page.allows) facts.set(`allow ${a.rule}`, a.because ?? '');
    return facts;
}
/** Facts whose text touches a line, by the offsets of that line. */
export function touched(text: string, from: number, to: number): Set<string> {
    const page = pageOf(text);
    const names = new Set<string>();
    const hit = (s: { start: number; end: number }) => s.start <= to && from <= s.end;
    if (page.title && hit(page.title.span)) names.add('title').add('stage');
    if (page.stage && hit(page.stage.span)) names.add('stage');
    for (const p of page.parts) {
        const header = { start: p.kindSpan.start, end: (p.inside?.start ?? p.span.end) };
        if (hit(header)) {
            names.add(`part ${p.name}`);
            for (const key of p.entries.keys()) names.add(`${p.name}.${key}`);
        }
        for (const e of p.entries.values()) if (hit({ start: e.keySpan.start, end: Math.max(e.span.end, e.keySpan.end) })) names.add(`${p.name}.${e.key}`);
    }
    for (const l of page.lets) if (hit({ start: l.nameSpan.start, end: l.span.end })) names.add(`let ${l.name}`);
    for (const p of page.paths) if (hit(p.span)) names.add(`path ${p.medium} ${p.stops[0]?.name} ${p.stops.at(-1)?.name}`);
    for (const e of page.expects) if (hit(e.span)) names.add(`expect ${squeeze(e.text)}`);
    for (const u of page.uses) if (hit(u.span)) names.add(`use ${u.target}`);
    for (const a of page.allows) if (hit(a.span)) names.add(`allow ${a.rule}`);
    return names;
}

/** A rig with every construct of the frame. */
export const sample = `rig "Sample of everything", built

use "shelf.rig"
use parts

let spare = 0.9 * store.rating
let least = 3.2 A

## Feeds the stack.
supply {
  sort:             bench
  voltage:          26.0 V ± 0.2 V       # as read
  current-limit:    15 A
}
lye { solute: KOH   strength: 25 wt%   fill: 6 L }
stack {
  cells:            12
  wetted:           90 x 110 mm
  gap:              2.5 mm each side
  plate:            nickel, 130 x 150 x 1 mm
  site.sun:         110 W/m2 at 07:00,
                    360 W/m2 at 09:00
}
column h2-column { bore: 70 mm   level: 200 mm }
column o2-column like h2-column
column third like h2-column { level: 210 mm }
tee h2-tee

path hydrogen: stack -> h2-column -> h2-tee ->
               outdoors
path oxygen:   stack -> o2-column -> outdoors

switch bag-full {
  senses:           bag.volume
  makes:            above 48 L
  breaks:           below (12 L
                    + 8 L)
}
contactor main {
  latched-by:       start-button
  stopped-by:       emergency,
                    bag-full
}
reading warm { date: 2026-03-05 10:20   stack.voltage: 4.7 V ± 0.05 V }

allow compressor-not-for-hydrogen on stack until 2031-01-31 by Mia because "known"
expect stack.voltage between 20 V and 28 V
expect with winter: stack.voltage < 30 V
expect if bag-full sticks made: always bag.volume < 60 L
`;
