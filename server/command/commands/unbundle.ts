import { lstatSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { BadBundle, limits, unpack, type Unpacked } from '../bundle/unpack.js';
import { CannotDo, type Command } from '../command.js';
import { many } from '../words.js';

const unbundle: Command = {
    name: 'unbundle',
    summary: 'Unpacks a bundle, once all of it has been looked at; writes nothing where something is wrong with it.',
    args: 'FILE',
    most: 1,
    options: {
        out: { type: 'string', short: 'o', takes: 'FOLDER', doc: 'folder to unpack into; named like the bundle if left out' },
        force: { type: 'boolean', doc: 'writes over files that are there' },
    },
    examples: ['rigwright unbundle for-ana.zip', 'rigwright unbundle for-ana.zip -o shed'],
    async run({ options, args }, around) {
        if (!args.length) throw new CannotDo('unbundle takes a bundle.');
        const { manifest, files } = opened(path.resolve(around.cwd, args[0]), args[0]);
        const name = typeof options.out === 'string' ? options.out : path.basename(args[0], path.extname(args[0]));
        const folder = path.resolve(around.cwd, name);
        if (statSync(folder, { throwIfNoEntry: false })?.isDirectory() === false) throw new CannotDo(`${name} is a file; unbundle takes a folder.`);
        for (const f of files.keys()) mayWrite(folder, f, !!options.force);
        for (const [f, content] of files) {
            const target = path.join(folder, f);
            mkdirSync(path.dirname(target), { recursive: true });
            writeFileSync(target, content, { flag: options.force ? 'w' : 'wx' });
        }
        around.out(`${many(files.size, 'file')} unpacked into ${name}; each is what the bundle says it is. Who made the bundle, that does not tell.\nThe rig: ${path.join(name, manifest.rig)}\n`);
        return 0;
    },
};
export default unbundle;

function opened(file: string, name: string): Unpacked {
    const stat = statSync(file, { throwIfNoEntry: false });
    if (!stat?.isFile()) throw new CannotDo(`There is no file ${name}.`);
    try {
        if (stat.size > limits.archive) throw new BadBundle(`It is larger than ${limits.archive / 1e6} MB.`);
        return unpack(readFileSync(file));
    } catch (e) {
        if (e instanceof BadBundle) throw new CannotDo(`${name} was not unpacked. ${e.message}`);
        throw e;
    }
}
/** Looks at every step of the way: a link that stands there already would lead out of the folder. */
function mayWrite(folder: string, name: string, force: boolean): void {
    const steps = name.split('/');
    for (let i = 1; i <= steps.length; i++) {
        const there = lstatSync(path.join(folder, ...steps.slice(0, i)), { throwIfNoEntry: false });
        if (!there) return;
        const told = steps.slice(0, i).join('/');
        if (i < steps.length) {
            if (!there.isDirectory()) throw new CannotDo(`${told} is there already and is no folder; nothing was unpacked.`);
        } else if (!there.isFile()) throw new CannotDo(`${told} is there already and is no plain file; nothing was unpacked.`);
        else if (!force) throw new CannotDo(`${told} is there already; nothing was unpacked. --force writes over it.`);
    }
}
