/** See fetch-editor.mjs. */
export const editorVersion: string;
export function cacheFolder(): string;
export function editorFolder(cache?: string): string;
export function hasEditor(cache?: string): boolean;
export function fetchEditor(cache?: string): Promise<string>;
