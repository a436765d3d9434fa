/** The report of a rig: what somebody needs who decides, reviews or helps, and has not seen the text. Each section is one file of `of/`. */
import type { Analysis } from '../../index.js';
import { caution } from '../../reference/caution.js';
import { stageMeanings } from '../../reference/frame-words.js';
import { Asked, type ReportOptions } from './define.js';
import type { Report } from './page.js';
import { everySection } from './sections.generated.js';

const allSections = [...everySection].sort((a, b) => a.order - b.order);

/**
 * The report of a rig as sections; each tells what is known and says what is not. Never throws for any rig.
 * @returns data that `page.ts` writes as HTML, Markdown or text
 */
export function reportOf(analysis: Analysis, options: ReportOptions = {}): Report {
    const { workings, rig } = analysis;
    return workings.unnoted(() => {
        const asked = new Asked(analysis, options);
        const sections = allSections.map(({ name, title, lead, page, make }) => ({ name, title, lead, page, blocks: make(asked) })).filter(s => s.blocks.length);
        const subtitle = [`Report on a rig that makes hydrogen from water and current, worked out from its written description${options.today ? ` on ${options.today}` : ''}.`, `Stage: ${rig.stage}${rig.stageSaid ? '' : ' (not said)'}. ${stageMeanings[rig.stage].split('. ')[0].replace(/\.$/, '')}.`];
        if (asked.hidden.size) subtitle.push(`This copy is meant to be shared: it leaves out the store and what fills it, ${asked.hidden.size} parts. Sums count them, and what can fail in them is told. A copy with them is made on request.`);
        return { title: rig.title || 'A rig without a title', subtitle, sections, caution };
    });
}
export type { ReportOptions } from './define.js';
