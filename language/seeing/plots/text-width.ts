/** How much room text takes, where no browser can be asked: a little more than the widest usual plain face needs. */

const narrow = new Set([...'iljI.,:;\'|!()[]{}/ ·ftr-']);
const wide = new Set([...'mwMW@%—…→±≥≤≈']);

/** Width of a letter over the size of the face. */
function share(letter: string): number {
    const code = letter.codePointAt(0)!;
    if (code > 0x2e7f) return 1.1;
    if (narrow.has(letter)) return 0.4;
    if (wide.has(letter)) return 0.99;
    if (letter >= 'A' && letter <= 'Z') return 0.75;
    return code > 0x24f ? 0.8 : 0.65;
}
/** px that a text takes in a face of so many px. */
export function widthOf(text: string, size: number): number {
    let sum = 0;
    for (const letter of text) sum += share(letter);
    return sum * size;
}
/** The text, or as much of it as fits with … at its end. */
export function fitted(text: string, size: number, room: number): string {
    if (widthOf(text, size) <= room) return text;
    const dots = widthOf('…', size);
    let sum = 0;
    let out = '';
    for (const letter of text) {
        sum += share(letter) * size;
        if (sum + dots > room) break;
        out += letter;
    }
    return `${out.trimEnd()}…`;
}
/** The text in lines that fit; a word that is too long is cut, a number stays with its unit. */
export function wrapped(text: string, size: number, room: number): string[] {
    const lines: string[] = [];
    let line = '';
    const words = text.split(/\s+/).filter(Boolean);
    for (let i = 1; i < words.length; i++) {
        if (/^[-−±\d.]+$/.test(words[i - 1]) && /^[^\d\s]{1,5}$/u.test(words[i])) words.splice(i - 1, 2, `${words[i - 1]} ${words[i]}`);
    }
    for (const word of words) {
        const longer = line ? `${line} ${word}` : word;
        if (widthOf(longer, size) <= room) line = longer;
        else {
            if (line) lines.push(line);
            line = fitted(word, size, room);
        }
    }
    if (line) lines.push(line);
    return lines;
}
