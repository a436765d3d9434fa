/**
 * The same rig without its store: what presses gas, holds it under pressure and lets it out again is left away, and with it the devices that
 * only serve that. What stood before and behind it is joined. Worked out anew from what is left.
 */
import { Workings } from '../../quantities/workings.js';
import type { Path, Rig, Stop } from '../../rig/rig.js';

export interface Lesser {
    readonly workings: Workings;
    /** Names of what is left away. */
    readonly gone: ReadonlySet<string>;
}
/** Kinds that there are only where gas is pressed. */
const pressing: ReadonlySet<string> = new Set(['compressor', 'unloader', 'cylinder']);
/** What whoever uses the gas holds in hand: it stays. */
const using: ReadonlySet<string> = new Set(['burner', 'engine', 'fuel-cell', 'balloon', 'arrestor', 'meter', 'valve']);
const acting: ReadonlySet<string> = new Set(['switch', 'trip', 'timer', 'relay', 'contactor', 'solid-state-relay', 'analyser', 'sensor']);
/** Says what a gauge, a bleed or a purge point stands on. */
const ON = 'on';

/** Undefined where nothing holds gas under pressure. */
export function withoutStore(workings: Workings): Lesser | undefined {
    if (!workings.livePartsOf('cylinder').length && !workings.livePartsOf('compressor').length) return undefined;
    const gone = storeParts(workings);
    return { gone, workings: new Workings(lesserRig(workings.rig, gone), undefined, workings.supposed) };
}
function storeParts(workings: Workings): Set<string> {
    const { paths } = workings;
    const parts = [...workings.allViews()].filter(v => !v.pattern && !v.declared?.statement);
    const kindOf = new Map(parts.map(v => [v.name, v.kind]));
    const gone = new Set(parts.filter(v => pressing.has(v.kind)).map(v => v.name));
    const ofKind = (kind: string) => parts.filter(v => v.kind === kind).map(v => v.name);
    // Between what presses and what holds, and from there to what lets the pressure down.
    for (const cylinder of ofKind('cylinder')) {
        const behind = new Set(paths.after(cylinder, 'hydrogen'));
        for (const compressor of ofKind('compressor')) for (const n of paths.between(compressor, cylinder, 'hydrogen')) gone.add(n);
        for (const regulator of ofKind('regulator').filter(n => behind.has(n))) for (const n of [...paths.between(cylinder, regulator, 'hydrogen'), regulator]) gone.add(n);
        for (const relief of ofKind('relief-valve').filter(n => behind.has(n))) gone.add(relief);
    }
    const heard = new Map(parts.filter(v => acting.has(v.kind)).map(v => [v.name, workings.controls.listeners(v.name)]));
    // What hangs on these alone: its gas comes only from them, it stands on them, it senses them or drives nothing else.
    for (let before = -1; before < gone.size;) {
        before = gone.size;
        for (const v of parts) {
            if (gone.has(v.name)) continue;
            const into = paths.to(v.name, 'hydrogen');
            const fed = into.length > 0 && into.every(l => gone.has(l.from.name)) && !using.has(v.kind) && paths.after(v.name, 'hydrogen').every(n => !using.has(kindOf.get(n) ?? ''));
            const senses = acting.has(v.kind) ? workings.controls.sensed(v)?.split('.')[0] : undefined;
            if (fed || [...v.names(ON), v.word(ON), senses].some(n => n !== undefined && gone.has(n))) gone.add(v.name);
        }
        for (const name of onlyFor(gone, heard)) gone.add(name);
    }
    return gone;
}
/** Devices that drive nothing but what is gone, and each other. */
function onlyFor(gone: ReadonlySet<string>, heard: ReadonlyMap<string, readonly string[]>): Set<string> {
    const only = new Set([...heard].filter(([, by]) => by.length).map(([name]) => name));
    for (let before = -1; before !== only.size;) {
        before = only.size;
        for (const name of only) if (!heard.get(name)!.every(n => gone.has(n) || only.has(n))) only.delete(name);
    }
    const found = new Set<string>();
    for (let before = -1; before !== found.size;) {
        before = found.size;
        for (const name of only) if (heard.get(name)!.some(n => gone.has(n) || found.has(n))) found.add(name);
    }
    return found;
}
function lesserRig(rig: Rig, gone: ReadonlySet<string>): Rig {
    const paths: Path[] = [];
    const entrances: Stop[] = [];
    const exits: Stop[] = [];
    for (const path of rig.paths) {
        const { stops } = path;
        stops.forEach((stop, i) => {
            if (gone.has(stop.name) || path.medium !== 'hydrogen') return;
            if (gone.has(stops[i + 1]?.name)) entrances.push(stop);
            if (gone.has(stops[i - 1]?.name) && rig.parts.has(stop.name)) exits.push(stop);
        });
        // Each stretch of what stays.
        let stretch: Stop[] = [];
        const end = () => {
            if (stretch.length > 1) paths.push({ ...path, stops: stretch });
            stretch = [];
        };
        for (const stop of stops) {
            if (gone.has(stop.name)) end();
            else stretch.push(stop);
        }
        end();
    }
    const [from] = entrances;
    const isFed = (name: string) => paths.some(p => p.medium === 'hydrogen' && p.stops.some((s, i) => i > 0 && s.name === name));
    if (from) for (const to of exits) if (to.name !== from.name && !isFed(to.name)) paths.push({ medium: 'hydrogen', mediumSpan: from.span, stops: [from, to], span: from.span, file: from.span.file, broken: false });
    return { ...rig, parts: new Map([...rig.parts].filter(([name]) => !gone.has(name))), paths };
}
