/** Where things stand: what several rules ask of the site. */
import type { View } from '../quantities/view.js';

const indoors = new Set(['shed', 'garage', 'room', 'cellar', 'attic', 'flat']);

/** True under a closed roof, false in the open or under an open one, undefined if the place is not stated. */
export function isIndoors(v: View): boolean | undefined {
    const place = v.the('site')?.word('place');
    return place === undefined ? undefined : indoors.has(place);
}
/** The words of a part's `place` say that it stands outside. */
export function standsOutside(v: View): boolean {
    return /\b(outside|outdoors?|open air|open shelter|yard)\b/i.test(v.given('place').facts.get('')?.text ?? '');
}
/** The part stands under a closed roof: the site is indoors, and its own place does not say that it is outside. */
export function standsIndoors(v: View): boolean {
    return isIndoors(v) === true && !standsOutside(v);
}
/** Parts that keep hydrogen: bags, bells, cylinders. */
export function stores(v: View): View[] {
    return ['bag', 'gasometer', 'cylinder'].flatMap(kind => [...v.all(kind)]).filter(s => !s.part.pattern);
}
/** Nobody stands by for at least part of a run. */
export function runsAlone(v: View): boolean {
    const attended = v.the('routine')?.word('attended');
    return attended === 'no' || attended === 'first';
}
