// What the extension and the server say to each other beyond the language server protocol. This is all that the
// extension knows of the server.
import { RequestType } from 'vscode-languageclient';
import type { Position, WorkspaceEdit } from 'vscode-languageclient';
import type { Panel, Turning } from './panel/messages.js';

/** What the server is told once, when it starts. */
export interface StartOptions {
    /** The date on which rigs are judged, as YYYY-MM-DD; left out, it is the server's own today. */
    today?: string;
    /** Where the server runs: a process beside the editor, or a worker in the browser. */
    client: 'desktop' | 'browser';
}

/** A page about one thing: a rule, a kind of part, a property, a unit, a quantity. */
export interface Page {
    title: string;
    markdown: string;
}

/** A rig to start from. */
export interface Template {
    name: string;
    title: string;
    description: string;
    text: string;
}

/** How many findings a folder has. */
export interface FolderSummary {
    files: number;
    errors: number;
    warnings: number;
    hints: number;
}

/** Asks for the page about a place in a text, or about a name. */
export const explainRequest =
    new RequestType<{ uri: string; position: Position } | { name: string }, Page | null, void>('rigwright/explain');

/** Asks for the rigs that a maker can start from. */
export const templatesRequest = new RequestType<Record<string, never>, Template[], void>('rigwright/templates');

/** Hands over the texts of a folder; the server publishes their findings and answers with the counts. */
export const checkFolderRequest =
    new RequestType<{ files: { uri: string; text: string }[]; on?: string }, FolderSummary, void>('rigwright/checkFolder');

/** Asks for the edit that writes every assumption of a rig into its text; null where nothing is assumed. */
export const assumptionsRequest = new RequestType<{ uri: string }, WorkspaceEdit | null, void>('rigwright/assumptions');

/** An answer, or the sentence that says why there is none. */
export type Tried<T> = { answer: T } | { cannot: string };

/** One number that can be changed so that an expectation holds. */
export interface Way {
    input: string;
    text: string;
    now: string;
    gives?: string;
    /** Rules that would then tell something new. */
    raises: string[];
    edit?: WorkspaceEdit;
}
/** Asks for the single numbers that can be changed so that an expectation holds. */
export const waysRequest = new RequestType<{ uri: string; expectation: string }, Tried<Way[]> | null, void>('rigwright/ways');

/** Asks for the page about a rig at its corners. */
export const cornersRequest = new RequestType<{ uri: string }, Page | null, void>('rigwright/corners');

/** Asks what can be varied at a place, and which numbers there are to look at. */
export const sweepableRequest =
    new RequestType<{ uri: string; position: Position }, { over: string; numbers: { name: string; now: string; meaning: string }[] } | null, void>('rigwright/sweepable');

/** Asks for the table of some numbers over a range of one or two others. */
export const sweepRequest = new RequestType<{ uri: string; over: string[]; of: string[] }, Tried<Page> | null, void>('rigwright/sweep');

/** Asks for the scenarios of a rig, by name. */
export const scenariosRequest = new RequestType<{ uri: string }, string[] | null, void>('rigwright/scenarios');
/** Asks for the page about a rig over time: one of its scenarios, or a usual day. */
export const runRequest = new RequestType<{ uri: string; scenario?: string }, Tried<Page> | null, void>('rigwright/run');
/** Asks for the page about a rig with one thing broken at a time. */
export const faultsRequest = new RequestType<{ uri: string }, Tried<Page> | null, void>('rigwright/faults');

/** Files that a page was worked out from as they stand in the editor. */
export interface AboutFiles { about: string[] }
type Compared = ({ answer: Page } & AboutFiles) | { cannot: string };
/** Asks for the page about a rig beside what it was; the answer names old texts that are still lacking. `text` is null where there was no such file. */
export const changesRequest = new RequestType<{ uri: string; then: { uri: string; text: string | null }[]; name: string }, Compared | { needs: string[] } | null, void>('rigwright/changes');
/** Asks for the page about two open rigs. */
export const compareOpenRequest = new RequestType<{ before: string; after: string }, Compared | null, void>('rigwright/compareOpen');
/** Asks for the page about a rig beside its variants. */
export const variantsRequest = new RequestType<{ uri: string }, Compared | null, void>('rigwright/variants');

/** Asks what the panel shows for a place in a text; a number may be turned, and then it tells how the rig would be. */
export const panelRequest = new RequestType<{ uri: string; position: Position; turning?: Turning; theme: string; paper?: string; picture?: string }, Panel | null, void>('rigwright/panel');
/** Asks for the edit that writes a turned number into the text; null where it is not to be written. */
export const panelWriteRequest = new RequestType<{ uri: string; turning: Turning }, WorkspaceEdit | null, void>('rigwright/panelWrite');

/** The server asks for the text of another file, so that imports work on any file system that the editor knows. */
export const readFileRequest = new RequestType<{ uri: string }, { text: string } | { missing: true }, void>('rigwright/readFile');
