import { mkdirSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { allPapers, papersOf } from '../../../language/seeing/papers/index.js';
import { faultsIn } from '../../../language/run/faults.js';
import { nearest, offering } from '../../../language/values/nearest.js';
import { CannotDo, type Command } from '../command.js';
import { one } from '../one-rig.js';
import { canRun } from './run.js';

const papers: Command = {
    name: 'papers',
    summary: 'Prints what is needed at the bench: parts, cut list with a template, lye, test cards, first start, log; lists them if no file is named.',
    args: '[FILE]',
    most: 1,
    options: {
        output: { type: 'string', short: 'o', takes: 'FOLDER', doc: 'folder for the page and its files, or one .html' },
        only: { type: 'string', takes: 'NAMES', doc: 'these papers: parts,lye' },
        size: { type: 'string', takes: 'SIZE', default: 'a4', choices: ['a4', 'letter'], doc: 'size of the sheets' },
        faults: { type: 'boolean', doc: 'follows every single failure for the fault cards; takes some seconds' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with and that is printed, today if left out' },
    },
    examples: ['rigwright papers', 'rigwright papers shed.rig -o shed-papers', 'rigwright papers shed.rig -o lye.html --only lye'],
    async run({ options, args }, around) {
        const names = allPapers.map(p => p.name);
        if (!args.length) {
            const wide = Math.max(...names.map(n => n.length)) + 2;
            around.out(allPapers.map(p => `${p.name.padEnd(wide)}${p.title}. ${p.purpose}\n${' '.repeat(wide)}Made from: ${p.needs}.\n`).join(''));
            return 0;
        }
        const only = typeof options.only === 'string' ? options.only.split(',').map(n => n.trim()).filter(Boolean) : undefined;
        for (const n of only ?? []) if (!names.includes(n)) throw new CannotDo(offering(`There is no paper ${n}`, nearest(n, names), `. There are ${names.join(', ')}.`));
        if (typeof options.output !== 'string' || !options.output) throw new CannotDo('papers takes -o FOLDER, or -o with a name that ends in .html.');
        const { analysis, today } = one(args, options.on, around, 'papers');
        const made = papersOf(analysis, { only, size: options.size === 'letter' ? 'letter' : 'a4', date: today, faults: options.faults ? canRun(() => faultsIn(analysis.workings)) : undefined });
        const target = path.resolve(around.cwd, options.output);
        const single = /\.html?$/i.test(target);
        const isFolder = statSync(target, { throwIfNoEntry: false })?.isDirectory();
        if (isFolder === false && !single) throw new CannotDo(`${options.output} is a file; papers takes a folder, or a name that ends in .html.`);
        if (isFolder && single) throw new CannotDo(`${options.output} is a folder.`);
        if (!single) mkdirSync(target, { recursive: true });
        const files = single ? [{ name: '', text: made.html }] : [{ name: 'papers.html', text: made.html }, ...made.files];
        for (const f of files) writeFileSync(single ? target : path.join(target, f.name), f.text);
        around.out(`made ${single ? options.output : files.map(f => path.join(String(options.output), f.name)).join(', ')}\n`);
        return 0;
    },
};
export default papers;
