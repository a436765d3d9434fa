import type { ChildProcess } from 'node:child_process';
import type { CancellationToken, Diagnostic, InitializeResult, MessageConnection, PublishDiagnosticsParams, TextDocumentContentChangeEvent } from 'vscode-languageserver';

export interface ConnectOptions {
    args?: string[];
    capabilities?: object;
    options?: object;
    parent?: number;
    onReadFile?: (params: { uri: string }) => unknown;
}
export interface TestClient {
    child: ChildProcess;
    rpc: MessageConnection;
    initialized: InitializeResult;
    ended: Promise<number | string>;
    docs: Map<string, { text: string; version: number }>;
    trouble: string[];
    readonly stderr: string;
    published(uri: string): PublishDiagnosticsParams[];
    // eslint-disable-next-line @typescript-eslint/no-explicit-any
    ask(method: string, params?: object, token?: CancellationToken): Promise<any>;
    tell(method: string, params?: object): Promise<void>;
    at(uri: string, line: number, character: number): { textDocument: { uri: string }; position: { line: number; character: number } };
    open(uri: string, text: string): Promise<void>;
    close(uri: string): Promise<void>;
    edit(uri: string, ...changes: TextDocumentContentChangeEvent[]): Promise<void>;
    findings(uri: string, timeout?: number): Promise<Diagnostic[]>;
    stop(): Promise<number | string>;
}
export const usual: object;
export function connect(options?: ConnectOptions): Promise<TestClient>;
export interface RawMessage {
    id?: number;
    method?: string;
    params?: object;
    result?: unknown;
    error?: { code: number };
}
export function connectRaw(): Promise<{ messages: RawMessage[]; write(...messages: RawMessage[]): void; until(test: () => boolean, timeout?: number): Promise<void>; stop(): void }>;
export function sleep(ms: number): Promise<void>;
export function offsetOf(text: string, place: { line: number; character: number }): number;
export function placeOf(text: string, offset: number): { line: number; character: number };
export function changed(text: string, change: TextDocumentContentChangeEvent): string;
export function plain(list: readonly Diagnostic[]): string[];
