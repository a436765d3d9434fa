import type { Rigwright } from '../client.js';

/** Opens the panel beside the text, or brings it to the front. */
export function panel({ beside }: Rigwright): void {
    beside.show();
}
