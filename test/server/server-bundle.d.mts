export function serverBundle(): Promise<string>;
export function commandBundle(): Promise<string>;
export function serverInputs(): Promise<string[]>;
