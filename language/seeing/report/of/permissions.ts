/** Who was asked, and which rules are not heeded. */
import { cut, defineSection, heading, table, words } from '../define.js';
import type { Row } from '../page.js';

const MOST = 60;

export default defineSection({
    name: 'permissions', title: 'Permissions', order: 150, lead: 'Who has been asked, and which rules the description turns down or weighs otherwise, with the reason that was given.',
    make: ({ workings, analysis: { rig }, options }) => {
        const [site] = workings.partsOf('site');
        const said = (key: string) => site?.given(key).entry?.value?.text.trim() || 'not said';
        const { shown, rest } = cut(rig.allows, MOST, left => `And ${left} more.`);
        const rows = shown.map((p): Row => [
            [p.rule, p.on ? `on ${p.on.name}` : 'everywhere'], p.level ? `weighs as ${p.level}` : p.until && options.today && p.until < options.today ? 'ended: told again' : 'turned down',
            [p.because ?? 'no reason given', [p.by && `by ${p.by}`, p.until ? `until ${p.until}` : p.level ? '' : 'without an end'].filter(Boolean).join(', ')],
        ]);
        return [
            ...table(['who decides', 'as described'], [['Permission of whoever decides', said('permission')], ['Insurer', said('insurer')], ['Whose law', said('law')]]),
            heading('Rules not heeded'),
            ...(rows.length ? [...table(['rule', 'how', 'reason'], rows), ...rest] : [words('None: every rule is heeded.')]),
        ];
    },
});
