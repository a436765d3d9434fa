import { FoldingRangeKind, type FoldingRange } from 'vscode-languageserver';
import type { Feature } from '../feature.js';
import type { House } from '../house.js';

/** Blocks, runs of paths, comment headings. Works on any text. */
const folding: Feature = {
    name: 'folding',
    capabilities: () => ({ foldingRangeProvider: true }),
    register(connection, house) {
        connection.onFoldingRanges(({ textDocument }) => foldsOf(house, textDocument.uri));
    },
};
export default folding;

export function foldsOf(house: House, uri: string): FoldingRange[] {
    const page = house.page(uri);
    const doc = house.doc(uri);
    if (!page || !doc) return [];
    const folds: FoldingRange[] = [];
    const line = (offset: number) => doc.lines.at(offset).line;
    for (const p of page.parts) if (line(p.span.end - 1) > line(p.span.start)) folds.push({ startLine: line(p.span.start), endLine: line(p.span.end - 1) - (page.text[p.span.end - 1] === '}' ? 1 : 0) });
    for (const items of [page.paths, page.expects, page.allows]) {
        let start = -1;
        let end = -1;
        for (const i of [...items, undefined]) {
            const from = i ? line(i.span.start) : Infinity;
            if (i && from <= end + 1 && start >= 0) {
                end = line(i.span.end - 1);
                continue;
            }
            if (end > start && start >= 0) folds.push({ startLine: start, endLine: end });
            if (i) {
                start = from;
                end = line(i.span.end - 1);
            }
        }
    }
    let heading = -1;
    let comment = -1;
    for (let l = 0; l <= doc.lines.count; l++) {
        const text = l < doc.lines.count ? doc.lines.lineText(l) : '# ====';
        const isHeading = /^#\s*(?:={2,}|-{2,})/.test(text);
        if (isHeading) {
            if (heading >= 0 && l - 1 > heading) folds.push({ startLine: heading, endLine: l - 1, kind: FoldingRangeKind.Region });
            heading = l;
        }
        const isComment = /^\s*#/.test(text) && !isHeading;
        if (isComment && comment < 0) comment = l;
        if (!isComment && comment >= 0) {
            if (l - 1 > comment) folds.push({ startLine: comment, endLine: l - 1, kind: FoldingRangeKind.Comment });
            comment = -1;
        }
    }
    return folds;
}
