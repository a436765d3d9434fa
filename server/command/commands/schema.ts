import { schemaOf, schemas } from '../../../language/reference/output-schema.js';
import { nearest, offering } from '../../../language/values/nearest.js';
import { CannotDo, type Command } from '../command.js';

const schema: Command = {
    name: 'schema',
    summary: 'Prints the JSON Schema of what a command gives with --format json.',
    args: 'COMMAND',
    most: 1,
    options: {},
    examples: ['rigwright schema show > show.schema.json'],
    async run({ args: [name] }, around) {
        if (!name) throw new CannotDo(`schema takes the name of a command: ${schemas.join(', ')}.`);
        const found = schemaOf(name);
        if (!found) throw new CannotDo(offering(`No JSON of ${name} is described`, nearest(name, schemas), `; it is of ${schemas.join(', ')}.`));
        around.out(`${JSON.stringify(found, null, 2)}\n`);
        return 0;
    },
};
export default schema;
