/** Every set point, rating, relief, seal and head of a rig: who says it, of what, and where it lies. Read as the text has them. */
import type { View } from '../../quantities/view.js';
import type { Workings } from '../../quantities/workings.js';
import { measures } from '../../units/dimension.js';
import type { Rung } from './figure.js';

export interface SetPoint extends Pick<Rung, 'part' | 'says' | 'sort'> {
    /** What it looks at, 'cylinder.pressure'; undefined for what is stamped or stands by itself. */
    readonly senses?: string;
    /** SI, on the scale that it is written on. */
    readonly at: number;
    /** Its bounds, by the ± of the text or of what is worked out. */
    readonly bounds?: readonly [number, number];
    /** It stands where heads of liquid do, however much it bears. */
    readonly soft?: boolean;
}
/** Kinds of the soft side. */
const soft: ReadonlySet<string> = new Set(['stack', 'separator', 'column', 'bag', 'gasometer', 'seal', 'bubbler']);
const acts: readonly (readonly [property: string, verb: string, sort: Rung['sort']])[] = [
    ['makes', 'makes', 'control'], ['breaks', 'breaks', 'control'], ['alarm', 'warns', 'control'], ['resets', 'resets', 'control'], ['trips', 'trips', 'trip'],
];
/** What devices do at which number of what they sense. */
export function sensedPoints(workings: Workings): SetPoint[] {
    const out: SetPoint[] = [];
    for (const v of workings.allViews()) {
        if (v.part.pattern || v.part.kind?.statement || !v.part.kind?.properties.senses) continue;
        const senses = v.controls.sensed(v);
        if (!senses) continue;
        for (const [property, verb, sort] of acts) {
            if (!v.part.kind.properties[property]) continue;
            const at = v.maybe(`${property}.value`);
            if (at === at) out.push({ part: v.name, says: `${verb} ${v.word(`${property}.side`) ?? 'at'}`, sort, senses, at, bounds: within(v.bounds(`${property}.value`)) });
        }
    }
    return out;
}

const within = ({ low, high }: { readonly low: number; readonly high: number }): readonly [number, number] | undefined => (low < high ? [low, high] : undefined);

/** Pressures that are told of a part and are no place on a scale: what is lost in it at a flow, what a test began with. */
const noPlace = new Set(['drop', 'range', 'water', 'steel', 'air-pressure', 'use-pressure']);
const stands: Readonly<Record<string, readonly [says: string, sort: Rung['sort']]>> = {
    'relief-valve set': ['starts to open at', 'relief'], 'cylinder built-in-relief': ['its own relief opens at', 'relief'], 'regulator has-relief': ['its relief opens at', 'relief'],
    'regulator set': ['is set to', 'control'], 'regulator max-outlet': ['can be turned to', 'limit'], 'check-valve cracks-at': ['opens at a difference of', 'running'],
    'bag own-pressure': ['presses by itself with', 'running'], 'separator bubble-pressure': ['lets gas through at', 'limit'],
    'circulation-pump shut-off-head': ['presses against a shut way with', 'running'], 'burner pressure': ['needs', 'running'], 'cylinder end-pressure': ['counts as empty at', 'control'],
    'cylinder test-pressure': ['was tested to', 'limit'], 'stack test-pressure': ['was tested to', 'limit'], 'compressor starts-against': ['starts against', 'limit'], 'column lid': ['lid holds', 'limit'],
};
/** Numbers that are worked out and have a place on the scale. */
const worked: readonly (readonly [kind: string, quantity: string, says: string, sort: Rung['sort']])[] = [
    ['stack', 'hydrogen-head', 'hydrogen pushes against', 'running'], ['stack', 'oxygen-head', 'oxygen pushes against', 'running'], ['stack', 'separator-head', 'across separators, running', 'running'],
    ['stack', 'separator-head-worst', 'across, one outlet blocked', 'running'], ['gasometer', 'head', 'presses with', 'running'], ['seal', 'opens-at', 'opens at', 'relief'],
    ['cylinder', 'pressure-hot', 'full, on the hottest day', 'running'], ['compressor', 'stall-pressure', 'delivers nothing more at', 'running'],
];
/** All of them that are pressures, above that of the air outside, the lowest first. */
export function pressurePoints(workings: Workings): SetPoint[] {
    const pressure = measures.pressure.dimension;
    const out = sensedPoints(workings).filter(p => isPressure(workings, p));
    for (const v of workings.allViews()) {
        const { kind } = v.part;
        if (v.part.pattern || !kind || kind.statement || kind.group === 'records' || kind.group === 'world') continue;
        for (const property of Object.values(kind.properties)) {
            if (noPlace.has(property.name) || property.name in sensing) continue;
            const fact = [...v.given(property.name).facts.values()].find(f => f.amount?.dimension === pressure);
            if (!fact || fact.number !== fact.number) continue;
            const [says, sort] = stands[`${kind.name} ${property.name}`] ?? [property.name.replace(/-/g, ' '), 'limit'];
            out.push({ part: v.name, says: v.says(property.name) === 'assumed' ? `${says} (assumed)` : says, sort, at: fact.number, bounds: within(fact), soft: soft.has(kind.name) });
        }
        for (const [of, quantity, says, sort] of worked) {
            const result = of === kind.name ? v.result(quantity) : undefined;
            if (result && Number.isFinite(result.value)) out.push({ part: v.name, says, sort, at: result.value, bounds: within(result), soft: soft.has(of) });
        }
    }
    return out.sort((a, b) => a.at - b.at);
}
const sensing = Object.fromEntries(acts.map(([p]) => [p, true]));
function isPressure(workings: Workings, p: SetPoint): boolean {
    const view: View | undefined = workings.viewOf(p.part);
    const property = acts.find(([, verb]) => p.says.startsWith(verb))![0];
    return view?.given(property).facts.get('value')?.amount?.dimension === measures.pressure.dimension;
}
