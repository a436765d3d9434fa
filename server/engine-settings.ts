/**
 * How the JavaScript engine below server and command line is to keep house. Editing is short work after each key, in an engine that has
 * only just begun: what costs then is compiling, not running. Measured in `test/bench`: optimising later takes a third off
 * an edit of the first minutes, unfolding fewer calls another sixth, clearing up sooner a third off the memory, at no cost
 * in time. What can be said only when a process starts stands in `extension/server-process.json`.
 * They are settings of the engine, not of the language, and change between its versions: said only to those that are known to
 * have them (Node 20, 22 and 24), since an engine complains on stderr of one that it does not know.
 */
import { setFlagsFromString } from 'node:v8';

const version = Number.parseInt(process.versions.v8, 10);
if (version >= 11 && version <= 13) {
    // How much a function runs before it is optimised: six times the engine's own in bytes of its code, or four times in calls.
    setFlagsFromString(version === 11 ? '--interrupt-budget=400000' : '--invocation-count-for-turbofan=12000');
    // How much code of other functions is unfolded into one that is optimised, bytes: a sixth of the engine's own.
    setFlagsFromString('--max-inlined-bytecode-size-cumulative=150');
    // How far the heap grows over what was alive, percent, before it is cleared up.
    setFlagsFromString('--heap-growing-percent=50');
}
