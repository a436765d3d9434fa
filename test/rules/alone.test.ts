import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import { alone } from './alone.js';

/** True of the part whatever else will be there. */
const atOnce = new Set(['compressor-not-for-hydrogen', 'control-drives-nothing', 'cylinder-not-labelled', 'lye-without-protection', 'site-not-stated', 'separator-not-tested', 'sensor-break-reads-normal', 'spent-lye-no-plan']);

describe('a part by itself, as its template begins it', () => {
    it.each(alone.map(a => [a.text.split('\n')[0] + a.kind, a.text]))('%s is not scolded for what is not there yet', (_, text) => {
        const told = analyseText(text, { today: '2026-06-15' }).findings.filter(f => f.severity !== 'hint' && f.rule !== 'unknown-name' && !atOnce.has(f.rule));
        expect(told.map(f => `${f.severity} ${f.rule}: ${f.message}`)).toEqual([]);
    });
});
