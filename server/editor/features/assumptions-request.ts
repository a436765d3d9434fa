import { writeAll } from '../assumptions.js';
import { toWorkspaceEdit } from '../convert.js';
import type { Feature } from '../feature.js';

/** `rigwright/assumptions`: the edit that writes into the text what its numbers rest on; null where nothing is assumed. */
const assumptionsRequest: Feature = {
    name: 'assumptions-request',
    capabilities: () => ({}),
    register(connection, house) {
        connection.onRequest('rigwright/assumptions', ({ uri }: { uri: string }) => {
            const analysis = house.analysis(uri);
            const fix = analysis && writeAll(analysis);
            return fix ? toWorkspaceEdit(fix, house) : null;
        });
    },
};
export default assumptionsRequest;
