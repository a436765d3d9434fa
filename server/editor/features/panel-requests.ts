import type { Analysis } from '../../../language/index.js';
import { dark, printed, sharp, sharpLight, type Palette } from '../../../language/seeing/palette.js';
import { panelOf, siOf, turnable, type Panel, type Turning } from '../../../language/seeing/panel/model.js';
import { pictures, type Picture } from '../../../language/seeing/pictures.js';
import { toWorkspaceEdit } from '../convert.js';
import type { Feature } from '../feature.js';
import type { House, Position } from '../house.js';
import { spotAt } from '../spot.js';

const palettes: Readonly<Record<string, Palette>> = { light: printed, dark, sharp, 'sharp-light': sharpLight };

interface Asked {
    readonly uri: string;
    readonly position: Position;
    readonly turning?: Turning;
    readonly theme: string;
    /** Behind the picture, as #rrggbb; that of the theme's palette if left out. */
    readonly paper?: string;
    /** Name of the picture to draw; the first that can be drawn if left out. */
    readonly picture?: string;
}
interface Told extends Omit<Panel, 'findings'> {
    readonly at?: string;
    readonly findings: readonly (Omit<Panel['findings'][number], 'file' | 'start'> & { readonly uri: string; readonly line: number })[];
    readonly pictures: readonly { readonly name: string; readonly title: string }[];
    readonly picture?: { readonly name: string; readonly title: string; readonly svg?: string; readonly why?: string };
}

/** `rigwright/panel`: what the panel shows for a place in a text, with a number turned or not; null if the file is not known. `rigwright/panelWrite`: the edit that writes a turned number. */
const panelRequests: Feature = {
    name: 'panel-requests',
    capabilities: () => ({}),
    register(connection, house) {
        connection.onRequest('rigwright/panel', (asked: Asked) => panelFor(house, asked));
        connection.onRequest('rigwright/panelWrite', ({ uri, turning }: { uri: string; turning: Turning }) => panelWrite(house, uri, turning));
    },
};
export default panelRequests;

/** Pictures of a rig that are drawn already: the cursor moves far oftener than the text changes. */
const drawn = new WeakMap<Analysis, Map<string, ReturnType<Picture['draw']>>>();
function drawnOnce(picture: Picture, analysis: Analysis, palette: Palette): ReturnType<Picture['draw']> {
    let known = drawn.get(analysis);
    if (!known) drawn.set(analysis, (known = new Map()));
    const key = `${picture.name} ${JSON.stringify(palette)}`;
    let found = known.get(key);
    if (!found) known.set(key, (found = picture.draw(analysis, palette, 'panel-picture')));
    return found;
}
/** What the panel shows for a place in a text; null if the file is not known. */
export function panelFor(house: House, { uri, position, turning, theme, paper, picture }: Asked): Told | null {
    const sight = house.sight(uri);
    if (!sight) return null;
    const { analysis, page, doc } = sight;
    const spot = spotAt(page, doc.lines.offset(position));
    const at = { part: spot.part?.name, entry: spot.entry?.key };
    const turned = turning && turnedBy(house, analysis, turning);
    const panel = panelOf(analysis, at, turned);
    const shown = turned && 'rig' in turned.then ? turned.then : analysis;
    const own = palettes[theme] ?? printed;
    const palette = paper && /^#[0-9a-f]{6}$/.test(paper) ? { ...own, paper } : own;
    const named = spot.occurrence?.names[0];
    const first = pictures.find(p => p.name === picture) ?? pictures[0];
    return {
        ...panel, at: named !== undefined && analysis.rig.parts.has(named) ? named : spot.part?.name, findings: panel.findings.map(({ file, start, ...rest }) => ({ ...rest, uri: file, line: house.linesOf(file).at(start).line })),
        pictures: pictures.map(({ name, title }) => ({ name, title })), picture: first && { name: first.name, title: first.title, ...drawnOnce(first, shown, palette) },
    };
}
export function panelWrite(house: House, uri: string, turning: Turning) {
    const analysis = house.analysis(uri);
    const input = analysis && turnable(analysis.workings, turning.name);
    const fix = input?.write(siOf(input, turning.to));
    return fix ? toWorkspaceEdit(fix, house) : null;
}
function turnedBy(house: House, analysis: NonNullable<ReturnType<House['analysis']>>, turning: Turning) {
    const input = turnable(analysis.workings, turning.name);
    if (!input || !Number.isFinite(turning.to)) return undefined;
    const si = siOf(input, turning.to);
    const fix = input.write(si);
    const then = fix && house.tried(fix, analysis);
    // What may not be written is worked out all the same; what the rules would say of it is not asked.
    return { turning, text: input.say(si), then: then ?? { workings: input.at(si), findings: analysis.findings } };
}
