/** Which file a line `use` means, on every system and in every editor; what each gives is tried by reading two pages. */
import { describe, expect, it } from 'vitest';
import { Analyst } from '../../language/index.js';
import { resolveUse } from '../../language/rig/assemble.js';
import type { Use } from '../../language/rig/rig.js';

const from = (file: string, target: string) => resolveUse(file, { target, shipped: false } as Use);

describe('the file that is used', () => {
    it.each([
        ['/home/ada/shed.rig', 'shelf.rig', '/home/ada/shelf.rig'],
        ['/home/ada/shed.rig', '../lib/./shelf.rig', '/home/lib/shelf.rig'],
        ['/home/ada/shed.rig', '/srv/shelf.rig', '/srv/shelf.rig'],
        ['/shed.rig', '../../shelf.rig', '/shelf.rig'],
        ['file:///home/ada/shed.rig', 'my shelf.rig', 'file:///home/ada/my%20shelf.rig'],
        ['file:///c%3A/rigs/shed.rig', '../lib/shelf.rig', 'file:///c%3A/lib/shelf.rig'],
        ['vscode-vfs://github/ada/rigs/shed.rig', 'shelf.rig', 'vscode-vfs://github/ada/rigs/shelf.rig'],
        // A disk with a letter is no scheme, and what is written with backslashes stays so.
        ['C:\\rigs\\shed.rig', 'shelf.rig', 'C:\\rigs\\shelf.rig'],
        ['C:\\rigs\\shed\\a.rig', '../my lib/shelf.rig', 'C:\\rigs\\my lib\\shelf.rig'],
        ['C:\\rigs\\shed.rig', '..\\..\\..\\shelf.rig', 'C:\\shelf.rig'],
        ['C:\\rigs\\shed.rig', '/lib/shelf.rig', 'C:\\lib\\shelf.rig'],
        ['C:\\rigs\\shed.rig', 'D:\\lib\\shelf.rig', 'D:\\lib\\shelf.rig'],
        ['C:/rigs/shed.rig', 'shelf.rig', 'C:/rigs/shelf.rig'],
        ['\\\\bench\\rigs\\shed.rig', '..\\..\\shelf.rig', '\\\\bench\\rigs\\shelf.rig'],
    ])('%s, use "%s": %s', (file, target, expected) => {
        expect(from(file, target)).toBe(expected);
    });
    it.each(['/rigs/shed.rig', 'C:\\rigs\\shed.rig', 'file:///rigs/shed.rig'])('is read beside %s, and two files that use each other are told once', file => {
        const shelf = from(file, 'shelf.rig');
        const texts = new Map([[file, 'rig "Shed", drawn\nuse "shelf.rig"\nstack like small { cells: 5 }\n'], [shelf, 'library "Shelf"\nuse "shed.rig"\nstack small { wetted: 60 x 80 mm }\n']]);
        const analysis = new Analyst(f => texts.get(f)).analyse(file, { today: '2026-06-01' });
        expect(analysis.files).toEqual([file, shelf]);
        expect(analysis.findings.filter(f => f.rule === 'file-not-found')).toEqual([]);
        expect(analysis.findings.filter(f => f.rule === 'circular-use').map(f => f.span.file)).toEqual([shelf]);
    });
});
