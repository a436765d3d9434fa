// The picture of the panel in its own frame: as large as can be read or no wider than the frame, moved by dragging, scrolling and keys, with
// the part under the text cursor marked by corners. What is done here is remembered, and never asks for the picture anew.
import { html, nothing, type TemplateResult } from 'lit-html';
import { unsafeHTML } from 'lit-html/directives/unsafe-html.js';
import type { Panel, PictureView, Scale } from './messages.js';

/** At this scale the words of a drawing are as large as those of the editor. */
const READABLE = 1.2;
const [SMALLEST, LARGEST, STEP] = [0.15, 4, 1.25];
/** px that a press may wander and still be a click; px of room around a part that is brought into view. */
const [WANDER, AROUND] = [4, 24];
/** Layers in the words of the panel, in their order. */
const layers: Readonly<Record<string, string>> = { hydrogen: 'hydrogen', oxygen: 'oxygen', lye: 'lye', water: 'water', current: 'current', control: 'controls', values: 'numbers', findings: 'findings' };

let view: PictureView = { scales: {}, hidden: [] };
let shown: { name: string; svg: SVGSVGElement; width: number; height: number; scale: number } | undefined;
let frame: HTMLElement | undefined;
/** The part under the cursor, and the one that was last brought into view. */
let at: string | undefined;
let seen: string | undefined;
/** The part that the keys have come to. */
let walked: string | undefined;
let tell: { changed(view: PictureView): void; again(): void; toPart(name: string): void };

export function begin(answers: typeof tell): void {
    tell = answers;
}
export function remembered(stored: PictureView): void {
    view = stored;
}
function change(to: Partial<PictureView>): void {
    view = { ...view, ...to };
    tell.changed(view);
    tell.again();
}
/** A drawing is moved about; other pictures are seen as a whole, until somebody wants them otherwise. */
const wanted = (name: string): Scale => view.scales[name] ?? (name === 'drawing' ? 'readable' : 'fit');

/** The frame and what acts on it. */
export function pictureOf(picture: NonNullable<Panel['picture']>): TemplateResult {
    if (!picture.svg) return html`<p class="quiet">${picture.why ?? 'The text does not tell enough for this picture yet.'}</p>`;
    const { name } = picture;
    const there = Object.keys(layers).filter(l => picture.svg!.includes(`data-layer="${l}"`));
    const is = wanted(name);
    const button = (words: string, title: string, act: () => void, pressed?: boolean) => html`<button title=${title} aria-label=${words.length === 1 ? title.replace(/ \(.*/, '') : nothing} aria-pressed=${pressed ?? nothing} @click=${act}>${words}</button>`;
    return html`
    <div class="tools" role="group" aria-label="Size of the picture">
        ${button('−', 'Smaller (key −)', () => zoom(1 / STEP))}${button('+', 'Larger (key +)', () => zoom(STEP))}
        ${button('Readable', 'As large as the text (key 1)', () => sized('readable'), is === 'readable')}${button('Whole width', 'No wider than the panel (key 0)', () => sized('fit'), is === 'fit')}
    </div>
    ${there.length > 1 ? html`<fieldset class="layers"><legend>Show</legend>${there.map(l => html`
        <label><input type="checkbox" .checked=${!view.hidden.includes(l)} @change=${() => change({ hidden: view.hidden.includes(l) ? view.hidden.filter(h => h !== l) : [...view.hidden, l] })}>${layers[l]}</label>`)}</fieldset>` : nothing}
    <div class="drawing" tabindex="0" role="region" aria-label=${`${picture.title}. Arrow keys move it, plus and minus change its size${name === 'drawing' ? ', N and P go from part to part' : ''}.`}
        @click=${pointed} @keydown=${pressed} @wheel=${wheeled} @pointerdown=${grasped} @pointermove=${dragged} @pointerup=${released} @pointercancel=${released}>${unsafeHTML(picture.svg)}</div>
    ${name === 'drawing' ? html`<p class="quiet walk" aria-live="polite">${walked === undefined ? 'N next part, P the one before, Enter its line.' : wordsOf(walked)}</p>` : nothing}`;
}
/** After each drawing of the page: what was remembered is put on the picture, which may be a new one. @param look  bring the part into view even if it was before */
export function settle(root: HTMLElement, picture: Panel['picture'], part: string | undefined, look: boolean): void {
    const now = root.querySelector<HTMLElement>('.drawing') ?? undefined;
    const svg = now?.querySelector('svg');
    if (now !== frame) {
        if (frame) widths.unobserve(frame);
        if (now) widths.observe(now);
        frame = now;
    }
    if (!frame || !svg || !picture) {
        shown = undefined;
        return;
    }
    const fresh = shown?.name !== picture.name;
    const before = fresh ? undefined : shown?.svg;
    if (shown?.svg !== svg) {
        const { width, height } = svg.viewBox.baseVal;
        const scale = fresh ? 1 : shown!.scale;
        shown = { name: picture.name, svg, width, height, scale: 0 };
        // At once as large as the one before, so that nothing is measured, and scrolled, at another size.
        scaled(scale);
    }
    fitted();
    // A part goes with the last of what it carries.
    for (const g of svg.querySelectorAll<SVGGElement>('[data-layer], [data-media]')) {
        const { layer, media } = g.dataset;
        if ((layer !== undefined && view.hidden.includes(layer)) || media?.split(' ').every(m => view.hidden.includes(m))) g.setAttribute('display', 'none');
        else g.removeAttribute('display');
    }
    at = part;
    const place = marked(svg);
    if (fresh) frame.scrollTo(0, 0);
    else if (before && before !== svg) steadied(before, svg);
    if (place && (look || fresh || seen !== at)) intoView(place, fresh);
    if (look) frame.closest('section')?.scrollIntoView({ block: 'nearest', behavior: gently() });
    seen = at;
}
const gently = (): ScrollBehavior => (matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth');
const widths = new ResizeObserver(() => fitted());

function fitted(): void {
    if (!shown || !frame?.clientWidth) return;
    const { width, name } = shown;
    const is = wanted(name);
    scaled(typeof is === 'number' ? is : is === 'fit' ? Math.min(frame.clientWidth / width, READABLE) : READABLE);
}
function scaled(scale: number): void {
    if (!shown || shown.scale === scale) return;
    shown.scale = scale;
    shown.svg.setAttribute('width', String(shown.width * scale));
    shown.svg.setAttribute('height', String(shown.height * scale));
}
function sized(scale: Scale, x?: number, y?: number): void {
    if (!shown || !frame) return;
    // What is at the point, else in the middle, stays there.
    const [px, py] = [x ?? frame.clientWidth / 2, y ?? frame.clientHeight / 2];
    const [left, top, before] = [frame.scrollLeft + px, frame.scrollTop + py, shown.scale];
    change({ scales: { ...view.scales, [shown.name]: scale } });
    const by = shown.scale / before;
    frame.scrollLeft = left * by - px;
    frame.scrollTop = top * by - py;
}
function zoom(by: number, x?: number, y?: number): void {
    if (shown) sized(Math.min(LARGEST, Math.max(SMALLEST, shown.scale * by)), x, y);
}
function pressed(e: KeyboardEvent): void {
    if (e.ctrlKey || e.metaKey || e.altKey) return;
    if (e.key === '+' || e.key === '=') zoom(STEP);
    else if (e.key === '-') zoom(1 / STEP);
    else if (e.key === '0') sized('fit');
    else if (e.key === '1') sized('readable');
    else if (/^n$/i.test(e.key)) walk(1);
    else if (/^p$/i.test(e.key)) walk(-1);
    else if (e.key === 'Enter' && walked !== undefined) tell.toPart(walked);
    else if (e.key === 'Escape' && walked !== undefined) walkTo(undefined);
    else return;
    e.preventDefault();
}

/** Names of the parts on the sheet, each once, in the order in which they were drawn; without those that are hidden. */
function partsOn(svg: SVGSVGElement): string[] {
    const all = [...svg.querySelectorAll<SVGGElement>('[data-part]')].filter(g => g.checkVisibility());
    return [...new Set(all.map(g => g.dataset.part!))];
}
/** To the next part or the one before; from the one under the cursor where none was come to yet. */
function walk(by: 1 | -1): void {
    const names = shown ? partsOn(shown.svg) : [];
    if (!names.length) return;
    const from = names.indexOf(walked ?? at ?? '');
    walkTo(from < 0 ? names[by > 0 ? 0 : names.length - 1] : names[(from + by + names.length) % names.length]);
}
function walkTo(name: string | undefined): void {
    walked = name;
    tell.again();
    const place = shown && name !== undefined ? placeOf(shown.svg, name) : undefined;
    if (place) intoView(place, false);
}
/** What stands at a part, for eyes and for whoever has it read aloud. */
function wordsOf(name: string): string {
    const texts = shown ? [...shown.svg.querySelectorAll<SVGGElement>('[data-part]')].filter(g => g.dataset.part === name).flatMap(g => [...g.querySelectorAll('text')]) : [];
    // A long name is broken over two lines.
    const words = [...new Set(texts.map(t => t.textContent?.trim() ?? ''))].filter(t => t && !name.includes(t));
    return `${[name, ...words].join(', ')}. Enter goes to its line.`;
}
function wheeled(e: WheelEvent): void {
    // Without the key it scrolls, as everything does.
    if (!frame || !(e.ctrlKey || e.metaKey)) return;
    e.preventDefault();
    const box = frame.getBoundingClientRect();
    zoom(Math.exp(-e.deltaY / 400), e.clientX - box.left, e.clientY - box.top);
}

/** Where the hand took hold of the picture. */
let held: { x: number; y: number; left: number; top: number; moved: boolean } | undefined;
let justMoved = false;
function grasped(e: PointerEvent): void {
    justMoved = false;
    // A finger scrolls by itself.
    if (frame && e.button === 0 && e.pointerType === 'mouse') held = { x: e.clientX, y: e.clientY, left: frame.scrollLeft, top: frame.scrollTop, moved: false };
}
function dragged(e: PointerEvent): void {
    if (!frame || !held) return;
    const [dx, dy] = [e.clientX - held.x, e.clientY - held.y];
    if (!held.moved && Math.hypot(dx, dy) < WANDER) return;
    if (!held.moved) frame.setPointerCapture(e.pointerId);
    held.moved = true;
    frame.classList.add('held');
    frame.scrollLeft = held.left - dx;
    frame.scrollTop = held.top - dy;
}
function released(): void {
    justMoved = !!held?.moved;
    held = undefined;
    frame?.classList.remove('held');
}
/** A part of a drawing leads to its text. */
function pointed(e: Event): void {
    const part = justMoved ? undefined : (e.target as Element).closest?.('[data-part]')?.getAttribute('data-part');
    if (part) tell.toPart(part);
}

/** Its symbol in the flow, else the instrument that sits on another, else its coil in the rungs. */
function placeOf(svg: SVGSVGElement, name: string): SVGGraphicsElement | undefined {
    const all = [...svg.querySelectorAll<SVGGElement>('[data-part]')].filter(g => g.dataset.part === name || g.dataset.like?.split(' ').includes(name));
    const symbol = all.find(g => g.dataset.kind);
    if (symbol) return symbol.querySelector<SVGGraphicsElement>('g') ?? symbol;
    return all.find(g => g.dataset.mount && g.dataset.mount !== 'contact') ?? all.find(g => g.classList.contains('rung'))?.querySelector<SVGGElement>('.coil') ?? all[0];
}
/** Corners around the part under the cursor, closer below, where its name stands; a frame around the one that the keys have come to. */
function marked(svg: SVGSVGElement): SVGGraphicsElement | undefined {
    for (const old of svg.querySelectorAll('.pointer, .walked')) old.remove();
    const mark = (name: string | undefined, kind: string, path: (x1: number, y1: number, x2: number, y2: number, arm: number) => string) => {
        const place = name === undefined ? undefined : placeOf(svg, name);
        const box = place?.getBBox();
        if (!place || !box?.width) return undefined;
        // As large on the screen where the picture is small.
        const px = 1 / Math.min(1, shown?.scale || 1);
        const line = document.createElementNS('http://www.w3.org/2000/svg', 'path');
        line.setAttribute('class', kind);
        line.setAttribute('d', path(box.x - 6 * px, box.y - 6 * px, box.x + box.width + 6 * px, box.y + box.height + 3 * px, 8 * px));
        return { place, line };
    };
    const found = [
        mark(at, 'pointer', (x1, y1, x2, y2, arm) => `M${x1} ${y1 + arm}V${y1}H${x1 + arm}M${x2 - arm} ${y1}H${x2}V${y1 + arm}M${x2} ${y2 - arm}V${y2}H${x2 - arm}M${x1 + arm} ${y2}H${x1}V${y2 - arm}`),
        mark(walked, 'walked', (x1, y1, x2, y2) => `M${x1} ${y1}H${x2}V${y2}H${x1}Z`),
    ];
    for (const f of found) f?.place.append(f.line);
    return found[0]?.place;
}
/** Where the symbols stand on a sheet. */
function placesOn(svg: SVGSVGElement): Map<string, readonly [number, number]> {
    const places = new Map<string, readonly [number, number]>();
    for (const g of svg.querySelectorAll<SVGGElement>('[data-kind] > g')) {
        const [, x, y] = /translate\(([-\d.]+) ([-\d.]+)\)/.exec(g.getAttribute('transform') ?? '') ?? [];
        const name = g.parentElement!.dataset.part;
        if (x !== undefined && name !== undefined) places.set(name, [Number(x), Number(y)]);
    }
    return places;
}
/** An edit may move parts on the sheet: the one under the cursor, or else in the middle, stays where it is on the screen. */
function steadied(before: SVGSVGElement, after: SVGSVGElement): void {
    if (!frame || !shown) return;
    const [then, now] = [placesOn(before), placesOn(after)];
    const { scale } = shown;
    const [x, y] = [(frame.scrollLeft + frame.clientWidth / 2) / scale, (frame.scrollTop + frame.clientHeight / 2) / scale];
    let [name, least] = [at !== undefined && then.has(at) && now.has(at) ? at : undefined, Infinity];
    if (name === undefined) {
        for (const [n, [px, py]] of then) {
            const far = Math.hypot(px - x, py - y);
            if (far < least && now.has(n)) [name, least] = [n, far];
        }
    }
    if (name === undefined) return;
    const [[ax, ay], [bx, by]] = [then.get(name)!, now.get(name)!];
    if (ax !== bx) frame.scrollLeft += (bx - ax) * scale;
    if (ay !== by) frame.scrollTop += (by - ay) * scale;
}
/** Nothing moves if it is in view. */
function intoView(place: SVGGraphicsElement, atOnce: boolean): void {
    if (!frame) return;
    // It may be on its way to another part still: that ends here.
    frame.scrollTo({ left: frame.scrollLeft, top: frame.scrollTop, behavior: 'instant' });
    const [part, box] = [place.getBoundingClientRect(), frame.getBoundingClientRect()];
    if (part.left >= box.left + AROUND && part.right <= box.right - AROUND && part.top >= box.top + AROUND && part.bottom <= box.bottom - AROUND) return;
    frame.scrollTo({ left: frame.scrollLeft + part.left + part.width / 2 - box.left - box.width / 2, top: frame.scrollTop + part.top + part.height / 2 - box.top - box.height / 2, behavior: atOnce ? 'auto' : gently() });
}
