import { allRules } from '../../../language/rules/index.js';
import type { Command } from '../command.js';
import { styles } from '../style.js';
import { version } from '../version.js';
import { many } from '../words.js';

const rules: Command = {
    name: 'rules',
    summary: 'Lists the rules by family.',
    options: { format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'json'], doc: 'form of the output' } },
    async run({ options }, around) {
        if (options.format === 'json') {
            const rows = allRules.map(({ name, severity, family, summary, source }) => ({ name, severity, family, summary, source }));
            around.out(`${JSON.stringify({ version, rules: rows }, null, 2)}\n`);
            return 0;
        }
        const s = styles(around.colour);
        const width = Math.max(...allRules.map(r => r.name.length));
        const out: string[] = [];
        for (const family of new Set(allRules.map(r => r.family))) {
            out.push(s.strong(family));
            for (const r of allRules.filter(x => x.family === family)) {
                out.push(`  ${s[r.severity](r.severity.padEnd(8))} ${r.name.padEnd(width)}  ${s.quiet(r.summary)}`);
            }
            out.push('');
        }
        out.push(`${many(allRules.length, 'rule')}. rigwright explain NAME tells why, the limit and its source.`, '');
        around.out(out.join('\n'));
        return 0;
    },
};
export default rules;
