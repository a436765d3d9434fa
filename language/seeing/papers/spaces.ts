/** Gas spaces of a rig as far as its text tells them, and how air is driven out of them. */
import type { View } from '../../quantities/view.js';
import type { Bench } from './bench.js';

/** Oxygen in the air; wanted before hydrogen comes in: as the rule air-left-in-first-fill. */
export const AIR_OXYGEN = 0.209;
export const WANTED_OXYGEN = 0.01;
/** Times its own volume that goes through a space. Three would do if all mixed well; corners do not. Common practice, no source. */
export const VOLUMES = 5;

export interface Space {
    readonly name: string;
    /** m³; NaN where the text does not tell it. */
    readonly volume: number;
    readonly by: string;
}
/** Kinds that hold a gas space of their own. */
const hollow = ['column', 'bubbler', 'scrubber', 'trap', 'dryer', 'filter', 'bag', 'gasometer', 'compressor', 'cylinder', 'tube'];

function volumeOf(b: Bench, v: View): readonly [number, string] {
    switch (v.kind) {
        case 'column': return [Math.PI / 4 * b.num(v, 'bore') ** 2 * (b.num(v, 'height') - b.num(v, 'level')), 'above its level'];
        case 'bubbler': case 'scrubber': return [b.num(v, 'body.headspace'), 'headspace'];
        case 'bag': case 'gasometer': return b.told(v, 'dead-volume') ? [b.num(v, 'dead-volume'), 'rolled flat first'] : [b.num(v, 'volume'), 'full; less if it is rolled flat first'];
        case 'compressor': return [b.num(v, 'shell-volume'), 'shell'];
        case 'tube': {
            const size = b.sizes(v, 'size');
            return [Math.PI / 4 * (size ? size[0] - 2 * size[1] : b.num(v, 'bore')) ** 2 * b.num(v, 'length'), ''];
        }
        default: return [b.num(v, 'volume'), ''];
    }
}
/** Spaces on the way of one gas, in the order of the text. */
export function spacesOf(b: Bench, gas: 'hydrogen' | 'oxygen'): Space[] {
    const on = new Set(b.paths.on(gas));
    return b.parts(...hollow).filter(v => on.has(v.name)).map(v => {
        const [volume, by] = volumeOf(b, v);
        return { name: v.name, volume, by };
    });
}
/** Share of oxygen that is left of air after so many volumes of another gas, all well mixed. */
export const leftAfter = (volumes: number): number => AIR_OXYGEN * Math.exp(-volumes);
/** How often a vessel is filled to a pressure (Pa, gauge) and let down to that of the air until no more oxygen than wanted is left. */
export function fillings(pressure: number, air: number): number {
    return Math.ceil(Math.log(AIR_OXYGEN / WANTED_OXYGEN) / Math.log((pressure + air) / air));
}
