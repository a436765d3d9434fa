/** See settings.mjs. */
export const readable: Record<string, unknown>;
