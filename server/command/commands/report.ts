import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { asHtml, asMarkdown } from '../../../language/seeing/report/page.js';
import { reportOf, type ReportOptions } from '../../../language/seeing/report/report.js';
import { browserAt, pdfOf } from '../browser.js';
import { CannotDo, type Command, type Given } from '../command.js';
import { one } from '../one-rig.js';

/** What of a report may be chosen; a bundle has one too. */
export const reportOptions = {
    'with-storage': { type: 'boolean', doc: 'the report tells of the store and what fills it as well; left out otherwise, but for what can fail there' },
    'no-faults': { type: 'boolean', doc: 'the report breaks nothing, which takes a second or two' },
} as const;
/** What was chosen. */
export const chosen = (options: Given['options'], today: string): ReportOptions => ({ today, withStorage: !!options['with-storage'], faults: !options['no-faults'] });

const report: Command = {
    name: 'report',
    summary: 'Writes the report of a rig: one file that a stranger understands.',
    args: 'FILE',
    most: 1,
    options: {
        output: { type: 'string', short: 'o', takes: 'FILE', doc: 'where to, .html, .md or .pdf; Markdown on the terminal if left out' },
        ...reportOptions,
        size: { type: 'string', takes: 'SIZE', default: 'a4', choices: ['a4', 'letter'], doc: 'size of the sheets of a PDF' },
        browser: { type: 'string', takes: 'PATH', doc: 'browser that makes the PDF; one in the usual places if left out' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright report shed.rig -o shed.html', 'rigwright report shed.rig -o shed.pdf --with-storage'],
    async run({ options, args }, around) {
        const { analysis, today } = one(args, options.on, around, 'report');
        const made = reportOf(analysis, { ...chosen(options, today), clock: () => performance.now() });
        if (typeof options.output !== 'string') {
            around.out(asMarkdown(made));
            return 0;
        }
        const file = path.resolve(around.cwd, options.output);
        switch (path.extname(file).toLowerCase()) {
            case '.html': writeFileSync(file, asHtml(made)); break;
            case '.md': writeFileSync(file, asMarkdown(made)); break;
            case '.pdf': writeFileSync(file, await pdfOf(asHtml(made, options.size === 'letter' ? 'letter' : 'a4'), browserAt(typeof options.browser === 'string' ? options.browser : undefined))); break;
            default: throw new CannotDo('A report is written as .html, .md or .pdf.');
        }
        return 0;
    },
};
export default report;
