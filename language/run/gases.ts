/** Where gas comes out, and what is counted of it. */
import { OXYGEN_IN_AIR } from '../physics/constants.js';
import type { Room } from './of/room.js';
import { at, type Mixture } from './states.js';

export const AIR: Mixture = { oxygen: OXYGEN_IN_AIR, nitrogen: 1 - OXYGEN_IN_AIR };
export const OXYGEN: Mixture = { oxygen: 1, nitrogen: 0 };
const hydrogenOf = (gas: Mixture) => 1 - gas.oxygen - gas.nitrogen;

/** Counters count hydrogen alone. */
export class Gases {
    constructor(private readonly room: Room | undefined) {}
    intoRoom(gas: Mixture, flow: number, out: Float64Array): void {
        out[at.escaped] += flow * hydrogenOf(gas);
        this.room?.take(gas, flow, out);
    }
    outdoors(gas: Mixture, flow: number, out: Float64Array): void {
        out[at.vented] += flow * hydrogenOf(gas);
    }
    toUser(gas: Mixture, flow: number, out: Float64Array): void {
        out[at.used] += flow * hydrogenOf(gas);
    }
}
