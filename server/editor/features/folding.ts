import { FoldingRangeKind, type FoldingRange } from 'vscode-languageserver';
import type { Feature } from '../feature.js';
import { headingIn } from '../heading.js';
import type { House } from '../house.js';

/** Blocks, runs of paths, expectations and permissions, comments, stretches under a heading. Works on any text. */
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
    const { lines } = doc;
    const folds: FoldingRange[] = [];
    const put = (startLine: number, endLine: number, kind?: FoldingRangeKind) => {
        if (endLine > startLine) folds.push({ startLine, endLine, kind });
    };
    const lineOf = (offset: number) => lines.at(offset).line;
    // The closing brace stays in sight.
    for (const p of page.parts) put(lineOf(p.span.start), lineOf(p.span.end - 1) - (page.text[p.span.end - 1] === '}' ? 1 : 0));
    for (const items of [page.paths, page.expects, page.allows]) {
        let start = -1;
        let end = -2;
        for (const item of items) {
            const from = lineOf(item.span.start);
            if (from > end + 1) {
                put(start, end);
                start = from;
            }
            end = lineOf(item.span.end - 1);
        }
        put(start, end);
    }
    let heading = -1;
    let comment = -1;
    let content = -1;
    for (let l = 0; l <= lines.count; l++) {
        const text = l < lines.count ? lines.lineText(l) : undefined;
        const title = text === undefined || headingIn(text) !== undefined;
        if (title) {
            if (heading >= 0) put(heading, content, FoldingRangeKind.Region);
            heading = l;
        }
        const remark = !title && /^\s*#/.test(text!);
        if (remark && comment < 0) comment = l;
        if (!remark && comment >= 0) {
            put(comment, l - 1, FoldingRangeKind.Comment);
            comment = -1;
        }
        if (text?.trim()) content = l;
    }
    return folds;
}
