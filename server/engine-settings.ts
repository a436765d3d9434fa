/**
 * How the JavaScript engine below the server is to keep house. Editing is short work after each key, in an engine that has only
 * just begun: what costs then is compiling, not running. Measured in `test/bench`: optimising later takes a third off
 * an edit of the first minutes, clearing up sooner a third off the memory, at no cost in time.
 * They are settings of the engine, not of the language: one that it no longer knows is told on stderr and does nothing.
 */
import { setFlagsFromString } from 'node:v8';

/** How much a function runs, in bytes of its code, before it is optimised: six times the engine's own. */
setFlagsFromString('--interrupt-budget=400000');
/** How far the heap grows over what was alive, percent, before it is cleared up. */
setFlagsFromString('--heap-growing-percent=80');
