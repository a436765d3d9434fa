/** See examples.mjs. */
export const examplesFolder: string;
export const mainExample: string;
export const examplesDate: string;
export function lineToShow(): number;
