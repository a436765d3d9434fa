#!/usr/bin/env node
// Runs before `npm test`: a fresh clone needs no other command. Node's built-ins only, until the install is done.
import { execFileSync } from 'node:child_process';
import path from 'node:path';
import { isBuilt, isInstalled, npm, root } from './project.mjs';

if (!isInstalled()) {
    console.log('installing what the build and the tests need ...');
    npm('ci', '--loglevel=error');
}
if (!isBuilt()) {
    execFileSync(process.execPath, [path.join(root, 'extension', 'scripts', 'build.mjs')], { cwd: root, stdio: 'inherit' });
}
