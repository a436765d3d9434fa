import { allPlots, figureOf, pictureOf } from '../../plots/index.js';
import { printed } from '../../palette.js';
import { defineSection } from '../define.js';
import type { Block } from '../page.js';

/** Those that say something of a rig at rest. */
const shown: ReadonlySet<string> = new Set(['polarisation', 'volts', 'watts', 'purity']);

export default defineSection({
    name: 'plots', title: 'Plots', order: 70, lead: 'How the stack behaves around its working point: where the volts and watts go, and where its gases grow impure.',
    make: ({ analysis }) => allPlots.filter(p => shown.has(p.name)).flatMap((plot): Block[] => {
        const figure = figureOf(plot, analysis);
        return typeof figure === 'string' ? [] : [{ is: 'picture', svg: pictureOf(plot, figure, printed, `report-${plot.name}`), told: `${plot.title}. ${figure.says}` }];
    }),
});
