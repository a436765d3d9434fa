// The small part of Markdown that the pages use. Everything else stands there as it was written; no text can become a
// tag of its own.

/**
 * Markdown as HTML: headings, paragraphs, lists, tables, quotes, fenced code, rules, and in them code, bold, italic and
 * links. `link` says where a link leads, or nothing to leave its words plain.
 */
export function markdownToHtml(markdown: string, link: (address: string) => string | undefined): string {
    return blocks(markdown.replace(/\r\n?/g, '\n').split('\n'), link).join('\n');
}

type Link = (address: string) => string | undefined;

const heading = /^(#{1,6})\s+(.*?)\s*#*$/;
const fence = /^\s*(```|~~~)/;
const rule = /^\s*(?:-{3,}|\*{3,}|_{3,})\s*$/;
const bullet = /^(\s*)([-*+]|\d+[.)])\s+(.*)$/;
const tableRule = /^\s*\|?\s*:?-+:?\s*(?:\|\s*:?-+:?\s*)*\|?\s*$/;

function blocks(lines: string[], link: Link): string[] {
    const html: string[] = [];
    let i = 0;
    while (i < lines.length) {
        const line = lines[i];
        const title = heading.exec(line);
        if (!line.trim()) {
            i++;
        } else if (fence.test(line)) {
            const end = lines.findIndex((other, at) => at > i && fence.test(other));
            const stop = end < 0 ? lines.length : end;
            // It may be wider than the page: with a place for the focus, the arrow keys move it.
            html.push(`<pre tabindex="0"><code>${escape(lines.slice(i + 1, stop).join('\n'))}</code></pre>`);
            i = stop + 1;
        } else if (title) {
            html.push(`<h${title[1].length}>${inline(title[2], link)}</h${title[1].length}>`);
            i++;
        } else if (rule.test(line)) {
            html.push('<hr>');
            i++;
        } else if (line.includes('|') && tableRule.test(lines[i + 1] ?? '')) {
            const stop = endOf(lines, i + 2, other => other.includes('|'));
            html.push(table(lines.slice(i, stop), link));
            i = stop;
        } else if (line.startsWith('>')) {
            const stop = endOf(lines, i, other => other.startsWith('>'));
            const quoted = lines.slice(i, stop).map(other => other.replace(/^> ?/, ''));
            html.push(`<blockquote>${blocks(quoted, link).join('\n')}</blockquote>`);
            i = stop;
        } else if (bullet.test(line)) {
            const stop = endOf(lines, i, (other, at) => bullet.test(other) || (/^\s+\S/.test(other) && at > i));
            html.push(list(lines.slice(i, stop), link));
            i = stop;
        } else {
            const stop = endOf(lines, i, (other, at) => at === i || (other.trim() !== '' && !startsBlock(other)));
            const words = lines.slice(i, stop).map(other => inline(other.trim(), link) + (/ {2}$/.test(other) ? '<br>' : ''));
            html.push(`<p>${words.join('\n')}</p>`);
            i = stop;
        }
    }
    return html;
}

function startsBlock(line: string): boolean {
    return heading.test(line) || fence.test(line) || rule.test(line) || bullet.test(line) || line.startsWith('>');
}

function endOf(lines: string[], from: number, belongs: (line: string, at: number) => boolean): number {
    let at = from;
    while (at < lines.length && belongs(lines[at], at)) at++;
    return at;
}

function list(lines: string[], link: Link): string {
    const [, indent, mark] = bullet.exec(lines[0])!;
    const items: string[][] = [];
    for (const line of lines) {
        const start = bullet.exec(line);
        if (start && start[1].length <= indent.length) items.push([start[3]]);
        else items.at(-1)!.push(line);
    }
    const inner = items.map(([first, ...rest]) => {
        // What is indented below an item is either its next words or a list of its own.
        const words = endOf(rest, 0, line => !bullet.test(line));
        const text = [first, ...rest.slice(0, words).map(line => line.trim())].join(' ');
        const below = rest.slice(words);
        return `<li>${inline(text, link)}${below.length ? list(below, link) : ''}</li>`;
    });
    const tag = /\d/.test(mark) ? 'ol' : 'ul';
    return `<${tag}>${inner.join('')}</${tag}>`;
}

function table([head, , ...rows]: string[], link: Link): string {
    const cells = (row: string) => {
        const texts = row.trim().replace(/^\||\|$/g, '').split(/(?<!\\)\|/);
        return texts.map(text => inline(text.trim().replaceAll('\\|', '|'), link));
    };
    const columns = cells(head).map(cell => `<th scope="col">${cell}</th>`).join('');
    const body = rows.map(row => `<tr>${cells(row).map(cell => `<td>${cell}</td>`).join('')}</tr>`).join('');
    return `<table><thead><tr>${columns}</tr></thead><tbody>${body}</tbody></table>`;
}

/** Code; a sign that stands for itself; a link; bold; italic, but not inside a word. */
const inlinePattern = new RegExp([
    /`+([^`]+)`+/,
    /\\([\\`*_{}[\]()#+\-.!|<>~])/,
    /\[([^\]]+)\]\(<?([^)\s>]+)>?\)/,
    /(?<thick>\*\*|__)(?=\S)(.+?)(?<=\S)\k<thick>/,
    /(?<![\p{L}\p{N}])(?<slant>[*_])(?=\S)(.+?)(?<=\S)\k<slant>(?![\p{L}\p{N}])/u,
].map(part => part.source).join('|'), 'gu');

function inline(text: string, link: Link): string {
    let html = '';
    let done = 0;
    for (const match of text.matchAll(inlinePattern)) {
        html += escape(text.slice(done, match.index));
        done = match.index + match[0].length;
        const [, code, escaped, words, address, , bold, , italic] = match;
        if (code !== undefined) html += `<code>${escape(code)}</code>`;
        else if (escaped !== undefined) html += escape(escaped);
        else if (bold !== undefined) html += `<strong>${inline(bold, link)}</strong>`;
        else if (italic !== undefined) html += `<em>${inline(italic, link)}</em>`;
        else {
            const target = link(address);
            html += target === undefined ? inline(words, link) : `<a href="${escape(target)}">${inline(words, link)}</a>`;
        }
    }
    return html + escape(text.slice(done));
}

function escape(text: string): string {
    return text.replace(/&(?!nbsp;)/g, '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}
