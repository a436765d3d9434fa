import { templates } from '../../../language/reference/templates.js';
import type { Feature } from '../feature.js';

/** `rigwright/templates`: rigs to start from. */
const templatesRequest: Feature = {
    name: 'templates-request',
    capabilities: () => ({}),
    register(connection) {
        connection.onRequest('rigwright/templates', () => templates);
    },
};
export default templatesRequest;
