import { existsSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { asHtml } from '../../../language/seeing/report/page.js';
import { reportOf } from '../../../language/seeing/report/report.js';
import { pack } from '../bundle/pack.js';
import { limits } from '../bundle/unpack.js';
import { CannotDo, type Command } from '../command.js';
import { one } from '../one-rig.js';
import { chosen, reportOptions } from './report.js';

const bundle: Command = {
    name: 'bundle',
    summary: 'Puts a rig, the files that it uses, its tables and its report into one archive to hand on.',
    args: 'FILE',
    most: 1,
    options: {
        out: { type: 'string', short: 'o', takes: 'FILE', doc: 'archive to write, .zip; named like the rig if left out' },
        ...reportOptions,
        force: { type: 'boolean', doc: 'writes over an archive that is there' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright bundle shed.rig', 'rigwright bundle shed.rig -o for-ana.zip'],
    async run({ options, args }, around) {
        const { analysis, today } = one(args, options.on, around, 'bundle');
        const name = typeof options.out === 'string' ? options.out : `${path.basename(args[0], path.extname(args[0]))}.zip`;
        const file = path.resolve(around.cwd, name);
        if (path.extname(file).toLowerCase() !== '.zip') throw new CannotDo(`A bundle is written as .zip; not ${name}.`);
        if (existsSync(file) && !options.force) throw new CannotDo(`There is a ${name} already; --force writes over it.`);
        // Without a clock: the same files give the same bundle, however fast the machine is.
        const report = reportOf(analysis, chosen(options, today));
        const { bytes, manifest, left } = pack(analysis, asHtml(report), today);
        if (manifest.files.length >= limits.files || bytes.length > limits.archive || manifest.files.some(f => f.bytes > limits.each) || manifest.files.reduce((sum, f) => sum + f.bytes, 0) > limits.all) throw new CannotDo('That is too much for a bundle: nobody could unpack it.');
        writeFileSync(file, bytes);
        const wide = Math.max(...manifest.files.map(f => f.name.length)) + 2;
        around.out([`made ${name}, ${bytes.length} bytes`, ...manifest.files.map(f => `  ${f.name.padEnd(wide)}${f.bytes} bytes${f.renamed ? ', names files where they stand in the bundle' : ''}`), ''].join('\n'));
        if (left.length) around.out(['Not in it:', ...left.map(l => `  ${l}`), ''].join('\n'));
        if (!options['with-storage'] && analysis.workings.livePartsOf('cylinder').length) around.out('The report leaves the store out; the text of the rig tells all of it.\n');
        return 0;
    },
};
export default bundle;
