/**
 * An editor feature: what it announces and what it answers. One file per feature in `features/`; the list is generated.
 * A feature reads the house; it never decides whether something is wrong, and never keeps state of its own.
 */
import type { ClientCapabilities, Connection, ServerCapabilities } from 'vscode-languageserver';
import type { House } from './house.js';

export interface Feature {
    readonly name: string;
    readonly capabilities: (client: ClientCapabilities) => Partial<ServerCapabilities>;
    readonly register: (connection: Connection, house: House) => void;
}
