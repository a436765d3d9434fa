/**
 * Pictures as trees of SVG and HTML elements, written out as text. All that comes from a rig is escaped here and nowhere else. Only
 * presentation attributes: no style attributes, no <style>, no scripts; so several pictures share a page, and a strict content policy lets
 * them pass.
 */

/** A child of an element: text is escaped, an element stands as it is, what is undefined is left out. */
export type Child = Markup | string | number | undefined | false;
/** Attributes; what is undefined or false is left out, numbers are written with two decimals at most. */
export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** Text that is markup already. */
export class Markup {
    constructor(readonly text: string) {}
    toString(): string {
        return this.text;
    }
}
/** Any text as content or as the value of an attribute. Control characters, which no page may hold, become a box. */
export function escaped(text: string): string {
    return text.replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f\ufffe\uffff]/g, '\ufffd').replace(/[&<>"']/g, c => `&#${c.charCodeAt(0)};`);
}
/** A number short enough for a picture. */
export const short = (n: number): string => String(Math.round(n * 100) / 100);

/** Elements of HTML that have no end. */
const voids = new Set(['br', 'hr', 'img', 'input', 'meta', 'link', 'col']);
const inSvg = new Set(['svg', 'g', 'path', 'line', 'polyline', 'polygon', 'rect', 'circle', 'ellipse', 'text', 'tspan', 'title', 'desc', 'use', 'defs', 'clipPath', 'pattern', 'marker']);

/**
 * One element.
 *
 * @param tag  of SVG or HTML, never from a rig
 */
export function el(tag: string, attributes: Attributes = {}, ...children: readonly (Child | readonly Child[])[]): Markup {
    let text = `<${tag}`;
    for (const [name, value] of Object.entries(attributes)) {
        if (value === undefined || value === false) continue;
        text += value === true ? ` ${name}="${name}"` : ` ${name}="${typeof value === 'number' ? short(value) : escaped(value)}"`;
    }
    if (voids.has(tag)) return new Markup(`${text}>`);
    const inner = children.flat().map(c => (c === undefined || c === false ? '' : c instanceof Markup ? c.text : escaped(String(c)))).join('');
    return new Markup(inner === '' && inSvg.has(tag) ? `${text}/>` : `${text}>${inner}</${tag}>`);
}
/** Several things side by side. */
export function together(...children: readonly (Child | readonly Child[])[]): Markup {
    return new Markup(children.flat().map(c => (c === undefined || c === false ? '' : c instanceof Markup ? c.text : escaped(String(c)))).join(''));
}
/**
 * A whole picture that stands by itself, with what a screen reader tells of it.
 *
 * @param id  unlike any other on its page; begins the ids of title and description, and that of the picture itself
 */
export function picture(id: string, width: number, height: number, title: string, description: string, ...children: readonly (Child | readonly Child[])[]): Markup {
    return el('svg', {
        xmlns: 'http://www.w3.org/2000/svg', id: `${id}-picture`, viewBox: `0 0 ${short(width)} ${short(height)}`, width, height, role: 'img', 'aria-labelledby': `${id}-title ${id}-desc`, 'font-family': FONT,
    }, el('title', { id: `${id}-title` }, title), el('desc', { id: `${id}-desc` }, description), ...children);
}
/** Whatever plain face the reader has. */
export const FONT = 'system-ui, "Segoe UI", "Noto Sans", "DejaVu Sans", sans-serif';
