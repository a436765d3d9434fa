import { explain as page, explainable } from '../../../language/reference/explain.js';
import { handbook } from '../../../language/reference/handbook.js';
import { nearest } from '../../../language/values/nearest.js';
import { CannotDo, type Command } from '../command.js';

const explain: Command = {
    name: 'explain',
    summary: 'Explains a rule, a kind of part, a property, a quantity, a unit or a word of the language.',
    args: 'NAME',
    options: { all: { type: 'boolean', doc: 'the whole handbook, as Markdown' } },
    examples: ['rigwright explain relief-missing', 'rigwright explain stack.gap', 'rigwright explain kPa'],
    async run({ options, args }, around) {
        if (options.all) {
            around.out(handbook());
            return 0;
        }
        const name = args.join(' ');
        if (!name) throw new CannotDo('explain takes a name: a rule, a part, a property, a quantity or a unit.');
        const found = page(name);
        if (!found) {
            const near = nearest(name, explainable());
            throw new CannotDo(`Nothing is called ${name}${near ? `; did you mean ${near}?` : '.'}`);
        }
        around.out(`${found.markdown.trim()}\n`);
        return 0;
    },
};
export default explain;
