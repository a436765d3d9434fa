/** What commands print as JSON, held against the schemas that are published of it, by a validator that is not ours. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { schemaOf, schemas } from '../../language/reference/output-schema.js';
import { allCommands } from '../../server/command/commands.generated.js';
import { callIn } from './call.js';

const folder = path.resolve(import.meta.dirname, '../../examples');
const call = callIn(folder);
const ajv = new Ajv2020({ strict: true, allowUnionTypes: true });
const validators = new Map(schemas.map(name => [name, ajv.compile(schemaOf(name)!)]));
/** What does not fit, in words of the validator; nothing where all does. */
function misfits(command: string, document: unknown): string[] {
    const valid = validators.get(command)!;
    return valid(document) ? [] : (valid.errors ?? []).map(e => `${e.instancePath} ${e.message}`);
}
const rigs = readdirSync(folder).filter(f => f.endsWith('.rig') && /^\s*rig\b/m.test(readFileSync(path.join(folder, f), 'utf8')));

describe('schemas of what is printed', () => {
    it('there is one for each command that prints JSON', () => {
        expect(allCommands.filter(c => c.options.format?.choices?.includes('json')).map(c => c.name).sort()).toEqual(schemas);
    });
    it('hold for every example', async () => {
        expect(rigs.length).toBeGreaterThan(4);
        for (const rig of rigs) {
            for (const [command, ...more] of [['show'], ['show', '--all'], ['check'], ['run', '--for', '9h'], ['corners'], ['rules'], ['sweep', '--over', 'stack.gap: 1..4 mm', '--of', 'stack.voltage,stack.hydrogen-rate'], ['size', '--for', 'stack.volts-per-cell < 2 V']]) {
                const { out } = await call(command, rig, ...more, '--format', 'json');
                expect(misfits(command, JSON.parse(out)), `${command} ${rig}`).toEqual([]);
            }
        }
    });
    it('hold for failures, for what is sized by one number, for all rules, and for rigs with mistakes', async () => {
        for (const rig of ['lesson-two-cells.rig', 'potters-burner.rig', 'ferry-shelter-battery.rig', 'orchard-frost-solar.rig', 'workshop-two-groups.rig']) expect(misfits('faults', JSON.parse((await call('faults', rig, '--format', 'json')).out)), rig).toEqual([]);
        expect(misfits('size', JSON.parse((await call('size', 'potters-burner.rig', '--for', 'stack.volts-per-cell < 2.2 V', '--by', 'stack.wetted', '--format', 'json')).out))).toEqual([]);
        expect(misfits('rules', JSON.parse((await call('rules', '--format', 'json')).out))).toEqual([]);
        for (const rig of readdirSync(path.join(folder, 'mistakes')).filter(f => f.endsWith('.rig')).slice(0, 12)) {
            const { out } = await call('check', `mistakes/${rig}`, '--format', 'json');
            expect(misfits('check', JSON.parse(out)), rig).toEqual([]);
        }
    });
    it('hold for comparisons, of two rigs, one with mistakes among them, and of variants', async () => {
        const pairs = [[rigs[0], rigs[1]], [rigs[1], rigs[2]], [rigs[2], `mistakes/${readdirSync(path.join(folder, 'mistakes')).find(f => f.endsWith('.rig'))}`]];
        for (const pair of pairs) expect(misfits('compare', JSON.parse((await call('compare', ...pair, '--format', 'json')).out)), pair.join()).toEqual([]);
        const scratch = mkdtempSync(path.join(tmpdir(), 'rigwright-'));
        try {
            writeFileSync(path.join(scratch, 'v.rig'), `${readFileSync(path.join(folder, 'lesson-two-cells.rig'), 'utf8')}\nvariant cold { site.coldest: -9 °C }\nvariant fewer { stack.cells: 1 }\n`);
            const { out } = await call('compare', path.join(scratch, 'v.rig'), '--variants', '--format', 'json');
            expect(misfits('compare', JSON.parse(out))).toEqual([]);
        } finally {
            rmSync(scratch, { recursive: true, force: true });
        }
    });
    it('turn away what lacks something, has something more, or is of another sort', async () => {
        const { out } = await call('show', rigs[0], '--format', 'json');
        const read = () => JSON.parse(out) as { version?: string; quantities: Record<string, unknown>[] };
        const wrong: ((d: ReturnType<typeof read>) => unknown)[] = [
            d => delete d.version, d => (d.quantities[0].colour = 'red'), d => (d.quantities[0].value = 'much'), d => (d.quantities[0].status = 'guessed'), d => delete d.quantities[0].unit,
        ];
        for (const spoil of wrong) {
            const document = read();
            spoil(document);
            expect(misfits('show', document), String(spoil)).not.toEqual([]);
        }
    });
    it('are printed by a command, which offers the nearest name', async () => {
        expect(JSON.parse((await call('schema', 'run')).out)).toEqual(schemaOf('run'));
        expect(await call('schema', 'shwo')).toMatchObject({ status: 2, err: expect.stringContaining('did you mean show?') });
        expect(await call('schema', 'constructor')).toMatchObject({ status: 2 });
    });
});

describe('numbers as a table', () => {
    it('has a row for each, with its bounds, and nothing that a spreadsheet would work out', async () => {
        const lines = (await call('show', 'potters-burner.rig', '--format', 'csv')).out.trimEnd().split('\r\n');
        expect(lines[0]).toBe('part,quantity,value,unit,low,high,SI value,status,source');
        const rows = JSON.parse((await call('show', 'potters-burner.rig', '--format', 'json')).out).quantities as { name: string; value: number; unit: string }[];
        expect(lines).toHaveLength(rows.length + 1);
        const volts = rows.find(r => r.name === 'stack.volts-per-cell')!;
        const [, , value, unit, low, high] = lines.find(l => l.startsWith('stack,volts-per-cell,'))!.split(',');
        expect([Number(value), unit]).toEqual([volts.value, 'V']);
        expect(Number(low)).toBeLessThan(volts.value);
        expect(Number(high)).toBeGreaterThan(volts.value);
        for (const line of lines) expect(line).not.toMatch(/(^|,)"?[=+@]/);
    });
});
