import { offering } from '../../../language/values/nearest.js';
import { explain as page, nearestExplainable } from '../../../language/reference/explain.js';
import { handbook } from '../../../language/reference/handbook.js';
import { CannotDo, type Command } from '../command.js';
import { markdownAsText } from '../markdown-as-text.js';
import { styles } from '../style.js';

const explain: Command = {
    name: 'explain',
    summary: 'Explains a rule, a kind of part, a property, a quantity, a unit or a word of the language.',
    args: 'NAME',
    options: {
        markdown: { type: 'boolean', doc: 'print the page as Markdown' },
        all: { type: 'boolean', doc: 'the whole handbook, as Markdown' },
    },
    examples: ['rigwright explain relief-missing', 'rigwright explain stack.gap', 'rigwright explain kPa', 'rigwright explain --all > handbook.md'],
    async run({ options, args }, around) {
        if (options.all) {
            around.out(handbook());
            return 0;
        }
        const name = args.join(' ');
        if (!name) throw new CannotDo('explain takes a name: of a rule, a part, a property, a quantity, a unit or a word.');
        const found = page(name);
        if (!found) {
            const near = nearestExplainable(name);
            throw new CannotDo(offering(`Nothing is called ${name}`, near));
        }
        around.out(options.markdown ? `${found.markdown.trim()}\n` : markdownAsText(found.markdown, styles(around.colour), around.columns));
        return 0;
    },
};
export default explain;
