// Exported by the package, missing from its own declarations.
import 'mathjs';
declare module 'mathjs' {
    export const createUnitClass: (given: object) => unknown;
}
