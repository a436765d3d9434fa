/** Cries wolf? Whole rigs in which nothing is wrong, and the same with one mistake in them. RIGWRIGHT_RUNS sets how many; a sample otherwise. */
import { describe, expect, it } from 'vitest';
import { analyseText } from '../../language/index.js';
import type { Finding } from '../../language/rules/define.js';
import { allRules } from '../../language/rules/index.js';
import { faults, withFaults } from './faults.js';
import { wholeRig } from './whole-rigs.js';

const runs = Math.min(Number(process.env.RIGWRIGHT_RUNS ?? 0), 2000);
const SOUND = Math.max(runs, 40);
const FAULTY = Math.max(runs, faults.length);
/** What no rig of its kind can avoid: an ordinary compressor on hydrogen, 10 bar in one stage, gas kept, a room with walls. */
const unavoidable = new Set(['compressor-not-for-hydrogen', 'ratio-too-high-single-stage', 'stored-energy-note', 'sealed-room-clock']);
/** Pulses of a rectifier cost some per cent: what else it takes to smooth them is a choice, not a mistake. */
const pulses = 'ripple-costs-energy';
/** Findings beside the one that the mistake is to bring. */
const MOST_OTHERS = 2;
const findings = (text: string): readonly Finding[] => analyseText(text, { today: '2026-06-15' }).findings;
const told = (f: Finding) => `${f.severity} ${f.rule}: ${f.message}`;

describe('whole rigs', () => {
    it('that are sound bring no error, and nothing else but what they cannot avoid', { timeout: 3_600_000 }, () => {
        const seen = new Set<string>();
        for (let seed = 1; seed <= SOUND; seed++) {
            const { text, store, source, groups } = wholeRig(seed);
            for (const what of [store, source, `${groups} groups`]) seen.add(what);
            const found = findings(text);
            expect(found.filter(f => !unavoidable.has(f.rule) && !(f.rule === pulses && source === 'transformer')).map(told), `seed ${seed}`).toEqual([]);
            expect(found.filter(f => f.severity === 'error').map(told), `seed ${seed}`).toEqual([]);
        }
        expect([...seen].sort()).toEqual(['1 groups', '2 groups', 'bag', 'battery', 'bell', 'bench', 'cylinder', 'solar', 'switch-mode', 'transformer', 'vented']);
    });
    it('with one mistake bring the finding that tells it, and at most two others', { timeout: 3_600_000 }, () => {
        const names = new Set(allRules.map(r => r.name));
        expect(faults.flatMap(f => f.rules.filter(r => !names.has(r))), 'rules that there are').toEqual([]);
        const table = new Map<string, { put: number; others: number }>();
        for (const { fault, whole, text } of withFaults(FAULTY, wholeRig)) {
            const before = new Map<string, number>();
            for (const f of findings(whole.text)) before.set(f.rule, (before.get(f.rule) ?? 0) + 1);
            const fresh = findings(text).filter(f => {
                const left = before.get(f.rule) ?? 0;
                before.set(f.rule, left - 1);
                return left <= 0;
            });
            const others = fresh.filter(f => !fault.rules.includes(f.rule));
            expect(fresh.length - others.length, `${fault.name}: ${fresh.map(told).join('\n') || 'nothing told'}`).toBeGreaterThan(0);
            expect(others.length, `${fault.name}: ${others.map(told).join('\n')}`).toBeLessThanOrEqual(MOST_OTHERS);
            const row = table.get(fault.name) ?? { put: 0, others: 0 };
            table.set(fault.name, { put: row.put + 1, others: row.others + others.length });
        }
        // Each of them was really put into some rig.
        expect(faults.filter(f => !table.has(f.name)).map(f => f.name)).toEqual([]);
        if (runs) console.table(Object.fromEntries(table));
    });
});
