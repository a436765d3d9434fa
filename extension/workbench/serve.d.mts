/** See serve.mjs. */
export function serve(options: {
    folder: string;
    extensionFolder: string;
    editor: string;
    open?: string;
    line?: number;
    settings?: Record<string, unknown>;
    port?: number;
    idleMinutes?: number;
    onIdle?: () => void;
    log?: (line: string) => void;
}): Promise<{ address: () => string; host: string; stop: () => void }>;
