/** What the tests use of the reference integrator; its own sources do not pass a strict check. */
export class Solver {
    constructor(size: number);
    absoluteTolerance: number;
    relativeTolerance: number;
    solve(derivative: (t: number, y: number[]) => number[], from: number, y: number[], to: number): { y: number[] };
}
