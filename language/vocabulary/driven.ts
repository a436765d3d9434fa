import { conditions, part } from './define.js';

/** Properties of everything that runs on a contact: what must be so, what stops it, which feed carries it. */
export const driven = {
    needs: conditions('What must all be so for it to run: contacts in series, one to an item. `or` puts two side by side.', { example: '${1:main}' }),
    'stopped-by': conditions('Any one of these stops it: a switch when it breaks, a trip when it trips. and means only together.', { example: '${1:emergency}' }),
    'fed-from': part(['feed', 'battery', 'supply'], 'The feed that carries it, if not the control feed. What hangs on its own feed stays on when the rest drops.'),
};
