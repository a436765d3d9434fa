/** A request that is taken back before it was begun is not begun at all: its answer would be thrown away. */
import { LSPErrorCodes, type ConnectionStrategy, type Message, type ResponseMessage } from 'vscode-languageserver';

export const cancelAtOnce: ConnectionStrategy = {
    cancelUndispatched(message: Message): ResponseMessage | undefined {
        const { id } = message as Message & { id?: number | string };
        return id === undefined ? undefined : { jsonrpc: message.jsonrpc, id, error: { code: LSPErrorCodes.RequestCancelled, message: 'Taken back.' } };
    },
};
