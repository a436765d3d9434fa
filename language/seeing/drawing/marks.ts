/** Findings at their parts: a shape, how many, a word. */
import type { Analysis } from '../../index.js';
import type { Finding, Severity } from '../../rules/define.js';
import type { Span } from '../../rig/rig.js';
import type { Palette } from '../palette.js';
import { el, type Markup } from '../svg.js';

/** What stands on no part is left out. */
export function findingsByPart({ rig, findings }: Analysis): ReadonlyMap<string, readonly Finding[]> {
    const byFile = new Map<string, { span: Span; name: string }[]>();
    const note = (span: Span, name: string) => byFile.set(span.file, [...(byFile.get(span.file) ?? []), { span, name }]);
    for (const part of rig.parts.values()) if (!part.implied) note(part.span, part.name);
    for (const path of rig.paths) for (const stop of path.stops) if (rig.parts.has(stop.name)) note(stop.span, stop.name);
    const byPart = new Map<string, Finding[]>();
    for (const f of findings) {
        const at = byFile.get(f.span.file)?.find(p => p.span.start <= f.span.start && f.span.start < p.span.end);
        if (at) byPart.set(at.name, [...(byPart.get(at.name) ?? []), f]);
    }
    return byPart;
}
const shapes: Readonly<Record<Severity, string>> = {
    error: 'M-2.7-6.5H2.7L6.5-2.7V2.7L2.7 6.5H-2.7L-6.5 2.7V-2.7Z',
    warning: 'M0-6.5L7 5.5H-7Z',
    hint: 'M-5.5 0a5.5 5.5 0 1 0 11 0a5.5 5.5 0 1 0-11 0Z',
};
const colours: Readonly<Record<Severity, keyof Palette>> = { error: 'error', warning: 'warning', hint: 'soft' };
export const severities: readonly Severity[] = ['error', 'warning', 'hint'];

/** The mark with its middle at x, y; its word to the right. */
export function mark(severity: Severity, count: number, x: number, y: number, palette: Palette, word = true): Markup[] {
    const colour = palette[colours[severity]];
    return [
        el('path', { d: shapes[severity], transform: `translate(${x} ${y})`, fill: severity === 'hint' ? palette.paper : colour, stroke: colour }),
        el('text', { x, y: y + (severity === 'warning' ? 4 : 3), 'text-anchor': 'middle', 'font-size': 8, 'font-weight': 700, fill: severity === 'hint' ? palette.soft : palette.paper }, count > 1 ? count : severity === 'hint' ? 'i' : '!'),
        ...(word ? [el('text', { x: x + 10, y: y + 3.5, 'font-size': 10, fill: colour }, count > 1 ? `${severity}s` : severity)] : []),
    ];
}
