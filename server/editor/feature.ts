/**
 * An editor feature: what it announces and what it answers. One file per feature in `features/`; the list is generated.
 * A feature reads the house; it never decides whether something is wrong, and never keeps a truth of its own.
 */
import type { ClientCapabilities, Connection, ServerCapabilities } from 'vscode-languageserver';
import type { House } from './house.js';

export interface Feature {
    readonly name: string;
    /** What the server announces for it, given what the client can do. */
    readonly capabilities: (client: ClientCapabilities) => Partial<ServerCapabilities>;
    /** Answers the client's requests on a connection. Called once, before the connection listens. */
    readonly register: (connection: Connection, house: House) => void;
}
