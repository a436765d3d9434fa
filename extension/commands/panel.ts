import type { Rigwright } from '../client.js';

/** Opens the panel beside the text, or brings it to the front. */
export function panel({ beside }: Rigwright): void {
    beside.show();
}
/** The same at the flow drawing, with the part under the cursor in view. */
export function showInDrawing({ beside }: Rigwright): void {
    beside.show(true);
}
