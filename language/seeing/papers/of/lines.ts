/** Every tube and every wire: from where to where, how long, how wide, with what at its ends, and what is written on it. */
import type { Link } from '../../../rig/paths.js';
import type { Bench } from '../bench.js';
import { csvOf } from '../../../reference/csv.js';
import { blank, box, heading, quiet, table, words } from '../page.js';
import { definePaper } from '../paper.js';

const letters: Readonly<Record<string, string>> = { hydrogen: 'H', oxygen: 'O', lye: 'L', water: 'W', air: 'A', nitrogen: 'N' };
/** Properties that tell the bore where a line of gas leaves a part, and where it comes in. */
const leaves: Readonly<Record<string, string>> = { column: 'outlet', valve: 'bore', vent: 'bore', 'relief-valve': 'outlet', seal: 'pipe.bore', 'purge-point': 'bore' };
const comesIn: Readonly<Record<string, string>> = { valve: 'bore', vent: 'bore', 'relief-valve': 'inlet', seal: 'pipe.bore' };

export interface TubeLine {
    readonly label: string;
    readonly medium: string;
    readonly from: string;
    readonly to: string;
    readonly size: string | undefined;
    readonly length: string | undefined;
    readonly material: string | undefined;
    readonly ends: string | undefined;
    readonly mark: string | undefined;
}
/** Tubes on the paths, in the order of the text; those of which the text only tells that they join two parts too. */
export function tubeLines(b: Bench): TubeLine[] {
    const counts = new Map<string, number>();
    const label = (medium: string) => {
        const letter = letters[medium] ?? 'X';
        const n = (counts.get(letter) ?? 0) + 1;
        counts.set(letter, n);
        return `${letter}${n}`;
    };
    const done = new Set<string>();
    const found: TubeLine[] = [];
    const mouth = (name: string, keys: Readonly<Record<string, string>>) => {
        const v = b.other(name);
        const told = v && keys[v.kind] && b.told(v, keys[v.kind]);
        return told && `${told} at ${name}`;
    };
    const joined = (l: Link) => (l.medium === 'lye' ? undefined : [mouth(l.from.name, leaves), mouth(l.to.name, comesIn)].filter(Boolean).join(', ') || undefined);
    for (const l of b.paths.links) {
        if (l.medium === 'current') continue;
        const tube = [l.from.name, l.to.name].map(n => b.other(n)).find(v => v?.kind === 'tube' || v?.kind === 'link' && l.medium === 'lye');
        if (!tube) {
            // A way that the text tells twice, as that of both directions, is one tube.
            const key = `${l.medium} ${[l.from.name, l.to.name].sort().join(' ')}`;
            if (done.has(key)) continue;
            done.add(key);
            // The pipe of a seal is its own.
            const seal = b.other(l.from.name)?.kind === 'seal' ? b.other(l.from.name) : undefined;
            found.push({ label: label(l.medium), medium: l.medium, from: l.from.name, to: l.to.name, size: seal && b.told(seal, 'pipe.bore') && `${b.told(seal, 'pipe.bore')} bore`, length: seal && b.told(seal, 'pipe.length'), material: undefined, ends: joined(l), mark: undefined });
            continue;
        }
        if (done.has(tube.name)) continue;
        done.add(tube.name);
        const names = (links: readonly Link[], end: 'from' | 'to') => links.map(x => x[end].name).join(', ');
        const medium = l.medium as 'hydrogen';
        found.push({
            label: label(l.medium), medium: l.medium, from: names(b.paths.to(tube.name, medium), 'from') || '', to: names(b.paths.from(tube.name, medium), 'to') || '',
            size: b.told(tube, 'size') ?? (b.told(tube, 'bore') && `${b.told(tube, 'bore')} bore`), length: b.told(tube, 'length'), material: b.told(tube, 'material'),
            ends: b.told(tube, 'secured') === 'yes' ? 'secured' : undefined, mark: b.told(tube, 'label') ?? tube.name,
        });
    }
    const media = [...new Set(found.map(t => t.medium))];
    return media.flatMap(m => found.filter(t => t.medium === m));
}
export interface WireLine {
    readonly label: string;
    readonly from: string;
    readonly to: string;
    readonly what: string;
    readonly section: string | undefined;
    readonly length: string | undefined;
    readonly ends: string | undefined;
}
/** The way of the stack's current. */
export function powerLines(b: Bench): WireLine[] {
    const found: WireLine[] = [];
    const done = new Set<string>();
    for (const l of b.paths.links) {
        if (l.medium !== 'current') continue;
        const leads = [l.from.name, l.to.name].map(n => b.other(n)).find(v => v?.kind === 'leads');
        if (leads && done.has(leads.name)) continue;
        if (leads) done.add(leads.name);
        found.push({
            label: `P${found.length + 1}`, from: leads ? b.paths.to(leads.name, 'current').map(x => x.from.name).join(', ') : l.from.name, to: leads ? b.paths.from(leads.name, 'current').map(x => x.to.name).join(', ') : l.to.name,
            what: leads ? `${leads.name}: a pair, plus and minus${b.told(leads, 'keyed') === 'yes' ? ', keyed' : ''}` : 'wire',
            section: b.told(leads, 'section'), length: leads && b.told(leads, 'length') && `${b.told(leads, 'length')} each way`, ends: b.told(leads, 'ends'),
        });
    }
    return found;
}
/** From each device to those that hear it. */
export function controlLines(b: Bench): WireLine[] {
    const found: WireLine[] = [];
    for (const v of b.parts('switch', 'trip', 'analyser', 'detector', 'sensor', 'timer', 'button', 'stop-button', 'relay', 'contactor', 'solid-state-relay')) {
        const heard = b.controls.listeners(v.name).filter(n => b.other(n) && !b.other(n)!.part.kind?.statement);
        if (!heard.length) continue;
        const breaks = b.told(v, 'if-wire-breaks');
        found.push({ label: `C${found.length + 1}`, from: v.name, to: heard.join(', '), what: [b.told(v, 'fed-from') && `fed from ${b.told(v, 'fed-from')}`, breaks && `wire broken: ${breaks}`].filter(Boolean).join('; '), section: undefined, length: undefined, ends: undefined });
    }
    return found;
}
const or = (t: string | undefined) => t ?? blank();

export default definePaper({
    name: 'lines', place: 50, title: 'Tubes and wires',
    purpose: 'Every line of the rig from end to end, with what is told of its size, and a label for both of its ends.',
    needs: 'paths, tube, leads; the control parts for the wires',
    cautions: () => [
        'Label both ends of a line before it is put in, with the gas and an arrow. Hydrogen and oxygen hoses look alike.',
        'Mains wiring is for those who may do it. Everything here is put in without power and without gas.',
        'A hose for hydrogen is clipped at both ends, rises or falls all the way, and is never led past a heater or a motor with brushes.',
    ],
    make: b => {
        const tubes = tubeLines(b);
        const wires = [...powerLines(b), ...controlLines(b)];
        const feeds = b.parts('feed');
        const bonded = b.the('site')?.rows('bonded').map(r => r.get('')?.text ?? '').filter(Boolean) ?? [];
        return [
            heading('Tubes'),
            tubes.length ? table(['label', 'from', 'to', 'size', 'length', 'material', 'told of its ends', 'in'],
                tubes.map(t => [`${t.label} ${t.medium}`, t.from, t.to, or(t.size), or(t.length), or(t.material), [t.mark && t.mark !== t.label ? `${t.mark}${t.ends ? ', ' : ''}` : '', t.ends ?? (t.mark ? '' : blank())], box()])) : words('The text has no paths of gas, lye or water.'),
            quiet('A tee, a bubbler and the like are joined by a short piece each: that is a line here too. What has no size in the text has a blank.'),
            heading('Current of the stack'),
            powerLines(b).length ? table(['label', 'from', 'to', 'what', 'section', 'length', 'ends', 'in'], powerLines(b).map(w => [w.label, w.from, w.to, w.what, or(w.section), or(w.length), or(w.ends), box()])) : words('The text has no path of current.'),
            heading('Control wires'),
            controlLines(b).length ? table(['label', 'from', 'to', 'mind', 'section', 'length', 'in'], controlLines(b).map(w => [w.label, w.from, w.to, w.what, or(w.section), or(w.length), box()])) : words('The text has nothing that listens to anything.'),
            wires.length > 0 && feeds.length > 0 ? words('Fed by: ', feeds.map(f => `${f.name}${b.told(f, 'voltage') ? ` ${b.written(f, 'voltage')}` : ''}${b.told(f, 'fuse') ? `, fuse ${b.told(f, 'fuse')}` : ''}`).join('; '), '.') : undefined,
            heading('Earth'),
            bonded.length ? table(['from', 'to', 'section', 'length', 'ohms read', 'in'], bonded.map(n => [n, 'earth', blank(), blank(), blank(), box()])) : words('What is bonded to earth: ', blank('long'), '.'),
        ];
    },
    files: b => [{
        name: 'lines.csv',
        text: csvOf([['label', 'medium', 'from', 'to', 'size', 'length', 'material', 'ends'], ...tubeLines(b).map(t => [t.label, t.medium, t.from, t.to, t.size, t.length, t.material, t.ends]), ...powerLines(b).map(w => [w.label, 'current', w.from, w.to, w.section, w.length, '', w.ends]), ...controlLines(b).map(w => [w.label, 'control', w.from, w.to, w.section, w.length, '', w.ends])]),
    }],
});
