/** The small part of Markdown that our pages use, as lines of a terminal. */
import type { Styles } from './style.js';

const USUAL_WIDTH = 100;
const NARROWEST = 40;
/** A first column of a table wider than this goes on a line of its own. */
const WIDEST_NAME = 34;

/** @param columns characters on a line of the terminal */
export function markdownAsText(markdown: string, s: Styles, columns = USUAL_WIDTH): string {
    const width = Math.max(NARROWEST, Math.min(columns, USUAL_WIDTH));
    const out: string[] = [];
    const lines = markdown.replaceAll('\r', '').split('\n');
    for (let i = 0; i < lines.length;) {
        const line = lines[i];
        const title = /^#{1,6} (.*)$/.exec(line);
        const bullet = /^(\s*)- (.*)$/.exec(line);
        if (line.startsWith('```')) {
            for (i++; i < lines.length && !lines[i].startsWith('```'); i++) out.push(`    ${lines[i]}`.trimEnd());
            i++;
        } else if (title) {
            out.push(s.strong(plain(title[1])));
            i++;
        } else if (line.startsWith('|')) {
            const rows: string[][] = [];
            for (; lines[i]?.startsWith('|'); i++) rows.push(lines[i].replace(/^\|\s*|\s*\|$/g, '').split(/\s*(?<!\\)\|\s*/).map(c => plain(c.replaceAll('\\|', '|'))));
            out.push(...table(rows, width, s));
        } else if (bullet) {
            const indent = bullet[1].length + 2;
            out.push(...wrapped(plain(bullet[2]), width, indent).map((l, k) => (k ? l : `${' '.repeat(indent - 2)}- ${l.trimStart()}`)));
            i++;
        } else if (/^-{3,}$/.test(line)) {
            i++;
            while (lines[i] === '') i++;
        } else if (line.trim() === '') {
            out.push('');
            i++;
        } else {
            const text: string[] = [];
            while (i < lines.length && lines[i].trim() && !/^(#{1,6} |\||\s*- |```)/.test(lines[i])) text.push(lines[i++].trim());
            out.push(...wrapped(plain(text.join(' ')), width, 0));
        }
    }
    return `${out.join('\n').replace(/\n{3,}/g, '\n\n').trim()}\n`;
}
/** Without the marks for bold, italic and code. */
function plain(text: string): string {
    return text.replace(/\*\*(?=\S)(.+?)(?<=\S)\*\*/g, '$1').replace(/(?<![\p{L}\p{N}*])\*(?=[^\s*])([^*]+?)(?<=\S)\*(?![\p{L}\p{N}*])/gu, '$1').replaceAll('`', '');
}
function wrapped(text: string, width: number, indent: number): string[] {
    const lines: string[] = [];
    let line = '';
    for (const word of text.split(' ')) {
        if (line && indent + line.length + 1 + word.length > width) {
            lines.push(' '.repeat(indent) + line);
            line = word;
        } else {
            line = line ? `${line} ${word}` : word;
        }
    }
    return [...lines, ' '.repeat(indent) + line];
}
/** Names in a column, what is said of them beside it; a third column goes behind the second. */
function table([head, , ...rows]: string[][], width: number, s: Styles): string[] {
    const name = Math.min(WIDEST_NAME, Math.max(...rows.map(r => r[0].length), 4));
    const out = [s.quiet(`  ${head[0].padEnd(name)}  ${head.slice(1).join('; ')}`)];
    for (const [first, second, ...more] of rows) {
        const extra = more.map((m, k) => (m ? ` [${/said/.test(head[k + 2]) && !m.startsWith('never') ? `${head[k + 2]}: ` : ''}${m}]` : '')).join('');
        const lines = wrapped(second + extra, width, name + 4);
        if (first.length > name) out.push(`  ${first}`, ...lines);
        else out.push(`  ${first.padEnd(name)}  ${lines[0].trimStart()}`, ...lines.slice(1));
    }
    return out;
}
