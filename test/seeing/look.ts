/** What can be told of a picture without looking at it: whether it is sound markup, stays on its page, and no text lies over another. */
import { expect } from 'vitest';
import { boxOf, meet, type Box } from '../../language/seeing/plots/pen.js';

/** Every tag closed in its order, every attribute quoted and said once, no bare & or <. Throws with the place where it is not. */
export function soundMarkup(text: string): void {
    const open: string[] = [];
    const tag = /<(\/?)([a-zA-Z]+)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>/y;
    let at = 0;
    while (at < text.length) {
        const next = text.indexOf('<', at);
        const between = text.slice(at, next < 0 ? text.length : next);
        if (/&(?!#\d+;)/.test(between) || between.includes('>')) throw new Error(`bare sign in ${JSON.stringify(between.slice(0, 80))}`);
        if (next < 0) break;
        tag.lastIndex = next;
        const m = tag.exec(text);
        if (!m) throw new Error(`no tag at ${JSON.stringify(text.slice(next, next + 80))}`);
        const names = [...m[3].matchAll(/([\w:-]+)=/g)].map(a => a[1]);
        if (new Set(names).size !== names.length) throw new Error(`an attribute twice: ${m[0]}`);
        if (/&(?!#\d+;)/.test(m[3])) throw new Error(`bare & in ${m[0]}`);
        if (/NaN|Infinity|undefined/.test(m[3])) throw new Error(`no number: ${m[0]}`);
        if (m[1]) {
            if (open.pop() !== m[2]) throw new Error(`</${m[2]}> closes nothing`);
        } else if (!m[4]) open.push(m[2]);
        at = tag.lastIndex;
    }
    if (open.length) throw new Error(`left open: ${open.join(' ')}`);
}
const plain = (text: string) => text.replace(/&#(\d+);/g, (_, n) => String.fromCodePoint(Number(n)));
const number = (attributes: string, name: string) => Number(new RegExp(`\\b${name}="([-\\d.]+)"`).exec(attributes)?.[1] ?? NaN);

export interface Lettered { readonly text: string; readonly box: Box }
export function textsOf(svg: string): Lettered[] {
    return [...svg.matchAll(/<text ([^>]*)>([^<]*)<\/text>/g)].map(([, a, t]) => {
        const text = plain(t);
        const anchor = (/text-anchor="(\w+)"/.exec(a)?.[1] ?? 'start') as 'start' | 'middle' | 'end';
        return { text, box: boxOf(number(a, 'x'), number(a, 'y'), text, { size: number(a, 'font-size'), anchor }) };
    });
}
/** Sound, no code, nothing that a page of a strict policy would refuse; all text inside, none over another. */
export function fitToPrint(svg: string): void {
    soundMarkup(svg);
    expect(svg).not.toMatch(/<script|<style|\sstyle=|\son\w+=|href=/i);
    const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)!.map(Number);
    const texts = textsOf(svg);
    expect(texts.length).toBeGreaterThan(3);
    for (const { text, box } of texts) {
        // Letters are reckoned wider than they are: half a letter of that is no harm at an edge.
        if (!(box.left >= -6 && box.right <= width + 6 && box.top >= 0 && box.bottom <= height)) throw new Error(`"${text}" leaves the page`);
    }
    texts.forEach((a, i) => texts.slice(i + 1).forEach(b => {
        if (meet(shrunk(a.box), shrunk(b.box))) throw new Error(`"${a.text}" lies over "${b.text}"`);
    }));
}
const shrunk = (b: Box): Box => ({ left: b.left + 1, right: b.right - 1, top: b.top + 1, bottom: b.bottom - 1 });
