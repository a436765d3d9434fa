/** What is bought or made, what it costs as far as it is told, and what lies in the drawer for the day when something tears. */
import type { View } from '../../../quantities/view.js';
import type { Bench } from '../bench.js';
import { csvOf } from '../../../reference/csv.js';
import { packOf, separatorSheet, spare } from '../pack.js';
import { blank, box, heading, quiet, table, unbroken, words, type Cell } from '../page.js';
import { definePaper } from '../paper.js';
import { el } from '../../svg.js';

/** What guards: it is bought with the first parts, not with what money is left. */
const guards = ['relief-valve', 'seal', 'arrestor', 'analyser', 'detector', 'trip', 'stop-button', 'fuse', 'check-valve', 'purge-point', 'horn', 'fan', 'vent', 'tray'];
/** Kinds that nobody buys. */
const notBought = new Set(['purpose', 'routine', 'site', 'budget', 'controller', 'lye']);
/** Lines of the text that say nothing about what to buy. */
const notForBuyers = new Set(['price', 'needs', 'stopped-by', 'latched-by', 'sounded-by', 'calibrated', 'tested', 'source', 'place', 'shut-while', 'opened-by', 'open-while', 'leaves-on', 'follows', 'on', 'fed-from', 'distance', 'level', 'base-height', 'top-height', 'note', 'if-wire-breaks', 'if-detached', 'if-unpowered', 'if-cell-dies', 'holes', 'window-at', 'current', 'changed', 'cell-fitted']);
/** Lines of one part before the rest is left to the text. */
const MOST_LINES = 9;

interface Line {
    readonly name: string;
    readonly kind: string;
    readonly count: number;
    readonly what: string;
    readonly price: string | undefined;
}
function lineOf(b: Bench, v: View): Line {
    const keys = new Set<string>();
    const properties = Object.keys(v.part.kind?.properties ?? {});
    for (const key of properties) if (!notForBuyers.has(key) && b.written(v, key)) keys.add(key);
    const told = [...keys].slice(0, MOST_LINES).map(key => `${key} ${b.written(v, key)}`);
    return { name: v.name, kind: v.kind, count: 1, what: `${told.join('; ')}${keys.size > MOST_LINES ? '; more in the text' : ''}`, price: b.told(v, 'price') };
}
function lines(b: Bench): { readonly guarding: Line[]; readonly others: Line[] } {
    const bought = b.parts().filter(v => v.part.kind && !v.part.kind.statement && v.part.kind.group !== 'records' && v.part.kind.group !== 'statements' && !notBought.has(v.kind) && !v.part.implied);
    return {
        guarding: guards.flatMap(kind => bought.filter(v => v.kind === kind)).map(v => lineOf(b, v)),
        others: bought.filter(v => !guards.includes(v.kind)).map(v => lineOf(b, v)),
    };
}
interface Spare {
    readonly what: string;
    readonly size: string | undefined;
    readonly count: number;
}
/** What wears, tears or blows, of which one lies ready. How many: common practice, no source. */
export function spares(b: Bench): Spare[] {
    const pack = packOf(b);
    const found: Spare[] = [];
    if (pack) {
        const gasket = [b.told(pack.stack, 'gasket.material'), b.told(pack.stack, 'gasket.free')].filter(Boolean).join(', ');
        found.push({ what: 'gaskets of the stack', size: gasket || undefined, count: spare(pack.gaskets) });
        const sheet = separatorSheet(b, pack.stack);
        if (pack.separators === pack.separators) found.push({ what: 'separator sheets', size: sheet && `${mm(sheet.size[0])} x ${mm(sheet.size[1])} mm`, count: spare(pack.separators) });
        if (pack.stack.said('tie-rods')) found.push({ what: 'tie rod with nuts and washers', size: b.told(pack.stack, 'tie-rods.thread'), count: 1 });
    }
    for (const v of b.parts('column', 'bubbler', 'scrubber')) found.push({ what: `seal of the lid of ${v.name}`, size: undefined, count: 1 });
    for (const v of b.parts('fuse')) found.push({ what: v.name === v.kind ? 'fuse' : `fuse ${v.name}`, size: [b.told(v, 'rating'), b.told(v, 'dc-rating') && `${b.told(v, 'dc-rating')} DC`].filter(Boolean).join(', ') || undefined, count: 2 });
    for (const v of b.parts('feed')) if (b.told(v, 'fuse') !== 'none') found.push({ what: `fuse for ${v.name}`, size: b.told(v, 'fuse'), count: 2 });
    for (const v of b.parts('filter')) found.push({ what: `element of ${v.name}`, size: b.told(v, 'sort'), count: 1 });
    for (const v of b.parts('dryer')) found.push({ what: `charge of ${v.name}`, size: [b.told(v, 'desiccant'), b.told(v, 'mass')].filter(Boolean).join(', ') || undefined, count: 1 });
    for (const v of b.parts('analyser')) found.push({ what: `cell of ${v.name}`, size: b.told(v, 'sort'), count: 1 });
    for (const v of b.parts('bag')) found.push({ what: `patch or film for ${v.name}`, size: b.told(v, 'material'), count: 1 });
    for (const v of b.parts('check-valve')) found.push({ what: `seat or whole ${v.name}`, size: undefined, count: 1 });
    if (b.paths.on('lye').length) found.push({ what: 'hose for lye, with clips', size: undefined, count: 1 });
    if (b.paths.on('hydrogen').length) found.push({ what: 'hose for hydrogen, with clips', size: undefined, count: 1 });
    return found;
}
const mm = (m: number) => String(Math.round(m * 10000) / 10);
const rows = (of: readonly Line[]) => of.map((l): Cell[] => {
    const kind = l.kind.replace(/-/g, ' ');
    return [l.name === l.kind ? kind : [l.name, el('br'), el('small', {}, kind)], String(l.count), l.what || blank('long'), l.price ? unbroken(l.price) : blank(), blank(), box()];
});
const head = ['part', 'no.', 'what the text tells of it', 'price', 'got from', 'got'];

export default definePaper({
    name: 'parts', place: 10, title: 'Parts and spares',
    purpose: 'What to get or make, with what guards first, what it costs where that is told, and what to keep in the drawer.',
    needs: 'the parts of the rig; prices where they are told',
    cautions: b => [
        'What guards is bought first. A rig that is built with the rest and waits for its guards gets tried without them.',
        b.parts('cylinder', 'relief-valve', 'regulator').length > 0 ? 'Cylinders, relief valves and regulators: only new or tested ones, made and listed for hydrogen, from those who may sell and test them.' : undefined,
    ],
    make: b => {
        const { guarding, others } = lines(b);
        const budget = b.the('budget');
        const priced = [...guarding, ...others];
        const open = priced.filter(l => !l.price).length;
        return [
            heading('What guards'), guarding.length ? table(head, rows(guarding)) : words('The text names nothing that guards.'),
            heading('All other parts'), others.length ? table(head, rows(others)) : words('The text names no others.'),
            heading('Spares'), quiet('How many is common practice, no source. Each in its own bag, with its size on it.'),
            table(['what', 'no.', 'size', 'where it lies', 'got'], spares(b).map(s => [s.what, s.count === s.count ? String(s.count) : blank(), s.size ?? blank(), blank(), box()])),
            heading('Money'),
            words('Prices told and other costs together: ', budget ? b.predicted(budget, 'parts-total') : blank(), `. Without a price: ${open} of ${priced.length} parts.`),
        ];
    },
    files: b => {
        const { guarding, others } = lines(b);
        const asRows = (group: string, of: readonly Line[]) => of.map(l => [group, l.name, l.kind, l.count, l.what, l.price ?? '', '']);
        return [{
            name: 'parts.csv',
            text: csvOf([['group', 'part', 'kind', 'count', 'told', 'price', 'got from'], ...asRows('guards', guarding), ...asRows('others', others), ...spares(b).map(s => ['spares', s.what, '', s.count, s.size ?? '', '', ''])]),
        }];
    },
});
