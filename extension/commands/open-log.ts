import type { Rigwright } from '../client.js';

/** Shows the log. It stays on this computer. */
export function openLog({ log }: Rigwright): void {
    log.show();
}
