import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from './project.mjs';

/** The licences of all packages whose code is in the bundles, as one text. `inputs` are the files that went into them. */
export function thirdPartyNotices(inputs) {
    const folders = new Set();
    for (const input of inputs) {
        const found = /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(input);
        if (found) folders.add(found[1]);
    }
    const notices = [...folders].sort().map(folder => {
        const { name, version, license } = JSON.parse(readFileSync(path.join(root, folder, 'package.json'), 'utf8'));
        const file = readdirSync(path.join(root, folder)).find(entry => /^licen[cs]e/i.test(entry));
        const words = file ? readFileSync(path.join(root, folder, file), 'utf8').trim() : `Licence: ${license}`;
        return `${name} ${version}\n${'-'.repeat(72)}\n${words}\n`;
    });
    return `Rigwright contains code of these packages.\n\n${notices.join('\n\n')}`;
}
