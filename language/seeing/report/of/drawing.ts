import { drawingOf } from '../../drawing/index.js';
import { printed } from '../../palette.js';
import { defineSection } from '../define.js';

export default defineSection({
    name: 'drawing', title: 'Drawing', order: 40, page: 'wide', lead: 'What is joined to what, and what drives what: letters and the kind of line tell what flows, the numbers are those of ordinary running.',
    make: a => {
        const quartered = 'report-drawing';
        const svg = drawingOf(a.analysis, printed, { id: quartered, without: a.hidden });
        return svg ? [{ is: 'picture', svg, told: `Flow drawing${a.hidden.size ? ', without the store and what fills it' : ''}.`, quartered }] : [];
    },
});
