import { Analyst } from '../../../language/index.js';
import { shippedText } from '../../../language/rig/assemble.js';
import { compare } from '../../../language/seeing/compare/compare.js';
import { comparisonReport } from '../../../language/seeing/compare/page.js';
import { NoVariants, sideBySide, sideBySideReport } from '../../../language/seeing/compare/side-by-side.js';
import { asMarkdown, type Report } from '../../../language/seeing/report/page.js';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';

interface Told {
    readonly answer: { readonly title: string; readonly markdown: string };
    /** Files that it was worked out from as they are on screen: when one of them changes, the page is old. */
    readonly about: readonly string[];
}
type Answer = Told | { readonly needs: readonly string[] } | { readonly cannot: string };
/** A text as it was; null: there was no such file then. */
interface Then { readonly uri: string; readonly text: string | null }

/** `rigwright/changes`, `rigwright/compareOpen`, `rigwright/variants`: a rig beside what it was, beside another one, beside its variants; null if the file is not known. */
const comparisonRequests: Feature = {
    name: 'comparison-requests',
    capabilities: () => ({}),
    register(connection, house) {
        connection.onRequest('rigwright/changes', ({ uri, then, name }: { uri: string; then: readonly Then[]; name: string }): unknown => changesFor(house, uri, then, name));
        connection.onRequest('rigwright/compareOpen', ({ before, after }: { before: string; after: string }): unknown => compareOpenFor(house, before, after));
        connection.onRequest('rigwright/variants', ({ uri }: { uri: string }): unknown => variantsFor(house, uri));
    },
};
export default comparisonRequests;

const nameOf = (uri: string) => {
    const last = uri.slice(uri.lastIndexOf('/') + 1);
    try {
        return decodeURIComponent(last);
    } catch {
        return last;
    }
};
const page = (title: string, report: Report, about: readonly string[]): Told => ({ answer: { title, markdown: asMarkdown(report) }, about: about.filter(f => shippedText(f) === undefined) });

/**
 * The rig on screen beside what it was. Whoever asks hands over the old texts; as long as some are lacking, the answer names them.
 * @param name  what the old state is called: 'the last commit'
 */
export function changesFor(house: House, uri: string, then: readonly Then[], name: string): Answer | null {
    const now = house.analysis(uri);
    if (!now) return null;
    const texts = new Map(then.map(t => [t.uri, t.text]));
    const needs = new Set<string>();
    const before = new Analyst(file => {
        if (!texts.has(file)) needs.add(file);
        return texts.get(file) ?? undefined;
    }).analyse(now.rig.root, { today: house.today });
    if (needs.size) return { needs: [...needs] };
    const file = nameOf(now.rig.root);
    if (texts.get(now.rig.root) === null) return { cannot: `${file} is not in ${name}.` };
    return page('Changes', comparisonReport(compare(before, now), [`${file} in ${name}`, `${file} as it stands in the editor`]), now.files);
}
export function compareOpenFor(house: House, before: string, after: string): Answer | null {
    const [was, is] = [house.analysis(before), house.analysis(after)];
    if (!was || !is) return null;
    if (was === is) return { cannot: `${nameOf(before)} and ${nameOf(after)} belong to one rig.` };
    return page('Comparison', comparisonReport(compare(was, is), [nameOf(before), nameOf(after)]), [...was.files, ...is.files]);
}
export function variantsFor(house: House, uri: string): Answer | null {
    const analysis = house.analysis(uri);
    if (!analysis) return null;
    try {
        return page('Variants', sideBySideReport(sideBySide(analysis, [], { today: house.today })), analysis.files);
    } catch (e) {
        if (e instanceof NoVariants) return { cannot: e.message };
        throw e;
    }
}
