/**
 * Plane figures as text in the open exchange form of drawings, release 12 in ASCII: lines, circles and words on layers, in millimetres. Its
 * groups are a code on one line and its value on the next.
 */
export interface Figure {
    /** Layers by name, with a colour number of that form: 1 red, 3 green, 5 blue, 7 black or white. */
    readonly layers: Readonly<Record<string, number>>;
    readonly lines: readonly { readonly layer: string; readonly from: readonly [number, number]; readonly to: readonly [number, number] }[];
    readonly circles: readonly { readonly layer: string; readonly middle: readonly [number, number]; readonly radius: number }[];
    readonly words: readonly { readonly layer: string; readonly at: readonly [number, number]; readonly height: number; readonly text: string }[];
    /** Lower left and upper right corner. */
    readonly from: readonly [number, number];
    readonly to: readonly [number, number];
}
const mm = (n: number) => String(Math.round(n * 1e4) / 1e4);
/** Words without line ends, in the characters that release 12 is sure to hold. */
const plain = (text: string) => text.replace(/[^\x20-\x7e]/g, c => (c === '±' ? '%%p' : c === '°' ? '%%d' : '?')).slice(0, 200);

export function dxfOf(f: Figure): string {
    const out: (string | number)[] = [];
    const put = (...groups: readonly (string | number)[]) => out.push(...groups);
    const point = (code: number, [x, y]: readonly [number, number]) => put(code, mm(x), code + 10, mm(y), code + 20, '0');
    put(0, 'SECTION', 2, 'HEADER', 9, '$ACADVER', 1, 'AC1009', 9, '$EXTMIN');
    point(10, f.from);
    put(9, '$EXTMAX');
    point(10, f.to);
    put(0, 'ENDSEC', 0, 'SECTION', 2, 'TABLES', 0, 'TABLE', 2, 'LAYER', 70, Object.keys(f.layers).length);
    for (const [name, colour] of Object.entries(f.layers)) put(0, 'LAYER', 2, name, 70, 0, 62, colour, 6, 'CONTINUOUS');
    put(0, 'ENDTAB', 0, 'ENDSEC', 0, 'SECTION', 2, 'ENTITIES');
    for (const l of f.lines) {
        put(0, 'LINE', 8, l.layer);
        point(10, l.from);
        point(11, l.to);
    }
    for (const c of f.circles) {
        put(0, 'CIRCLE', 8, c.layer);
        point(10, c.middle);
        put(40, mm(c.radius));
    }
    for (const w of f.words) {
        put(0, 'TEXT', 8, w.layer);
        point(10, w.at);
        put(40, mm(w.height), 1, plain(w.text));
    }
    put(0, 'ENDSEC', 0, 'EOF');
    const lines: string[] = [];
    for (let i = 0; i < out.length; i += 2) lines.push(String(out[i]).padStart(3), String(out[i + 1]));
    return `${lines.join('\r\n')}\r\n`;
}
