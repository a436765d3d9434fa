import { assumptionRows, quantityRows } from '../../../language/reference/quantities.js';
import type { Feature } from '../feature.js';
import { version } from '../version.js';

/** `rigwright/quantities`: every number of a rig, as the command `show --format json` prints them; null if the file is not known. */
const quantitiesRequest: Feature = {
    name: 'quantities-request',
    capabilities: () => ({}),
    register(connection, house) {
        connection.onRequest('rigwright/quantities', ({ uri }: { uri: string }) => {
            const analysis = house.analysis(uri);
            return analysis ? { version, quantities: quantityRows(analysis.workings), assumptions: assumptionRows(analysis.workings) } : null;
        });
    },
};
export default quantitiesRequest;
