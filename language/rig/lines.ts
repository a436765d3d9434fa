/** Offsets of a text as lines and characters (UTF-16, from 0), as editors and reports count. */

export interface Place { readonly line: number; readonly character: number }
export interface Stretch { readonly start: Place; readonly end: Place }

export class Lines {
    private readonly starts: number[] = [0];
    constructor(readonly text: string) {
        for (let i = text.indexOf('\n'); i >= 0; i = text.indexOf('\n', i + 1)) this.starts.push(i + 1);
    }
    get count(): number {
        return this.starts.length;
    }
    /** Place of an offset; beyond the text, its end. */
    at(offset: number): Place {
        const o = Math.max(0, Math.min(offset, this.text.length));
        let low = 0;
        let high = this.starts.length - 1;
        while (low < high) {
            const mid = (low + high + 1) >> 1;
            if (this.starts[mid] <= o) low = mid;
            else high = mid - 1;
        }
        return { line: low, character: o - this.starts[low] };
    }
    range(span: { start: number; end: number }): Stretch {
        return { start: this.at(span.start), end: this.at(span.end) };
    }
    /** Offset of a place; beyond a line, its end. */
    offset(place: Place): number {
        if (place.line >= this.starts.length) return this.text.length;
        return Math.min(this.starts[Math.max(0, place.line)] + Math.max(0, place.character), this.endOf(Math.max(0, place.line)));
    }
    startOf(line: number): number {
        return this.starts[line] ?? this.text.length;
    }
    /** Offset of the end of a line, its line break not counted. */
    endOf(line: number): number {
        let end = line + 1 < this.starts.length ? this.starts[line + 1] - 1 : this.text.length;
        if (end > this.starts[line] && this.text.charCodeAt(end - 1) === 13) end--;
        return end;
    }
    lineText(line: number): string {
        return this.text.slice(this.startOf(line), this.endOf(line));
    }
}

const known = new WeakMap<{ text: string }, Lines>();
/** Lines of a page, made once. */
export function linesOf(page: { text: string }): Lines {
    let lines = known.get(page);
    if (!lines) known.set(page, (lines = new Lines(page.text)));
    return lines;
}
