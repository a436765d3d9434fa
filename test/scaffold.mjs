// npm run new -- rule|kind|quantity|unit NAME [FAMILY]: makes the one file (and its page) that a new thing needs, filled in
// far enough that its test can fail for the right reason. Only Node's built-ins.
import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';

const root = path.resolve(import.meta.dirname, '..');
const [what, name, family] = process.argv.slice(2);
const die = message => {
    console.error(message);
    process.exit(2);
};
const usage = 'npm run new -- rule FAMILY/NAME | part NAME | quantity NAME | feature NAME | command NAME | plot NAME';
if (!what || !name) die(usage);

function create(file, text) {
    const full = path.join(root, file);
    if (existsSync(full)) die(`${file} exists already.`);
    mkdirSync(path.dirname(full), { recursive: true });
    writeFileSync(full, text);
    console.log(`made ${file}`);
}
const camel = s => s.replace(/-(\w)/g, (_, c) => c.toUpperCase());

switch (what) {
    case 'rule': {
        const [folder, rule] = name.includes('/') ? name.split('/') : [family, name];
        const folders = readdirSync(path.join(root, 'language/rules/of'));
        if (!folder || !folders.includes(folder)) die(`Which family? ${folders.join(', ')}`);
        create(`language/rules/of/${folder}/${rule}.ts`, `import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: '${rule}',
    family: 'the description',
    severity: 'warning',
    summary: 'The bad situation in one sentence.',
    why: 'Why it matters to the maker.',
    source: 'common practice, no source',
    on: 'stack',
    check(stack, tell) {
        const value = stack.q('volts-per-cell');
        if (!tell.exceeds(value, 3, 'V', stack, 'cells')) return;
        tell({ at: stack.at('cells'), message: \`\${show(value, 'V')} a cell is above 3 V.\` });
    },
});
`);
        create(`language/rules/of/${folder}/${rule}.md`, `# ${rule}

The bad situation in one sentence.

## Why it matters

## Limit

## Flagged

\`\`\`rig
rig "Wrong", drawn

stack { cells: 2   wetted: 40 x 50 mm }
#              ^ warning: how the message begins
\`\`\`

## Not flagged

\`\`\`rig
rig "Right", drawn

stack { cells: 2   wetted: 40 x 50 mm }
\`\`\`

## How to mend

## When not to worry
`);
        break;
    }
    case 'part':
    case 'kind':
        create(`language/vocabulary/kinds/${name}.ts`, `import { kind, quantity } from '../define.js';

export default kind({
    name: '${name}',
    doc: 'What it is and what it is for, in a sentence or two.',
    group: 'low side',
    on: ['hydrogen', 'oxygen'],
    properties: {
        bore: quantity('length', 'What it is, and why it matters.', { assume: ['8 mm', 'why this value'], usual: '2 mm..50 mm' }),
    },
});
`);
        break;
    case 'quantity':
        create(`language/quantities/of/${name}.ts`, `import { defineQuantity } from '../define.js';

export default [
    defineQuantity({
        name: '${name}', of: 'stack', measure: 'power', meaning: 'What the number is.', formula: 'In words and symbols.', source: 'Where it is from.',
        work: q => q.q('voltage') * q.q('current'),
    }),
];
`);
        break;
    case 'feature':
        create(`server/editor/features/${name}.ts`, `import type { Feature } from '../feature.js';

const ${camel(name)}: Feature = {
    name: '${name}',
    capabilities: () => ({}),
    register() {},
};
export default ${camel(name)};
`);
        break;
    case 'command':
        create(`server/command/commands/${name}.ts`, `import type { Command } from '../command.js';

const ${camel(name)}: Command = {
    name: '${name}',
    summary: 'What it does, in one line.',
    options: {},
    async run() {
        return 0;
    },
};
export default ${camel(name)};
`);
        break;
    case 'plot':
        create(`language/seeing/plots/of/${name}.ts`, `import { six } from '../ask.js';
import { definePlot } from '../define.js';

export default definePlot({
    name: '${name}', order: 99, title: 'What stands above it',
    meaning: 'What it shows, in one sentence.',
    needs: 'what a rig must tell for it, after It needs',
    show({ stack }) {
        if (!stack) return 'No stack is described.';
        const x = [0, 1];
        const y = x.map(v => v * stack.q('current'));
        return {
            shape: { is: 'curves', x: { name: 'across', unit: '' }, panes: [{ y: { name: 'up', unit: 'A' }, lines: [{ name: 'line', label: 'at its end', x, y, stroke: 'solid', ink: 'accent' }] }] },
            says: 'What one sees, with its own numbers.',
            table: { columns: [{ name: 'across', unit: '' }, { name: 'up', unit: 'A' }], rows: x.map((v, i) => [v, six(y[i])]) },
        };
    },
});
`);
        break;
    default:
        die(usage);
}
console.log('Now: npm run generate, fill it in, npx vitest run.');
