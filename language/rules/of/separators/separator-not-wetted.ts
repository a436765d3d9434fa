import { defineRule } from '../../define.js';
import type { View } from '../../../quantities/view.js';

export default defineRule({
    name: 'separator-not-wetted',
    family: 'separators and purity',
    severity: 'warning',
    summary: 'A separator that sheds water has no step in which it is wetted.',
    why: 'Dry pores of polypropylene or fluoroplastic are open to gas, and their cell shows a high voltage. Lye alone does not go in.',
    source: 'Young-Laplace: pores that are not wetted hold nothing; common practice, no source, for the materials',
    from: 'built',
    under: ['separator-not-tested'],
    on: 'stack',
    check(v, tell) {
        const separator = v.the('separator');
        if (!separator || v.says('separator') === 'none' || separator.says('material') === 'assumed') return;
        const material = separator.word('material') ?? '';
        if (!SHEDS.has(material) || separator.said('wetted-by')) return;
        if (v.the('routine')?.rows('steps').some(row => WETTING.test(row.get('')?.text ?? ''))) return;
        const wet = (t: View) => t.names('covers').includes(separator.name) && t.rows('with').some(row => /\bwet(ted)?\b/i.test(row.get('')?.text ?? ''));
        if (v.all('test').some(wet)) return;
        tell({ at: separator.at('material'), message: `${material} sheds lye: until it has been soaked, best in alcohol and then rinsed, its pores are open to gas. How it was wetted is not said.` });
    },
});

const SHEDS: ReadonlySet<string> = new Set(['PP-woven', 'PP-felt', 'PPS', 'PTFE']);
const WETTING = /\b(wet|wetting|wetted|soak|soaked|soaking)\b/i;
