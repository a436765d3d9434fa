/** Comparisons for the editor: beside the last commit, beside another open rig, beside its own variants. */
import { describe, expect, it } from 'vitest';
import { gather } from '../../extension/last-commit.js';
import { changesFor, compareOpenFor, variantsFor } from '../../server/editor/features/comparison-requests.js';
import { storing } from '../run/rigs.js';
import { open } from './marked.js';

const told = (a: unknown) => (a && typeof a === 'object' && 'answer' in a ? (a as { answer: { markdown: string } }).answer.markdown : '');

describe('changes since the last commit', () => {
    const edited = storing.replace('current-limit: 18 A', 'current-limit: 6 A');
    it('are of the text on screen, saved or not, and name both sides', () => {
        const { house, uri } = open(edited);
        expect(changesFor(house, uri, [], 'the last commit')).toEqual({ needs: [uri] });
        const answer = changesFor(house, uri, [{ uri, text: storing }], 'the last commit, 1a2b3c4d');
        expect(told(answer)).toMatch(/^# A store to run: what the change does\n\nFrom \S+ in the last commit, 1a2b3c4d to \S+ as it stands in the editor\.\n/);
        expect(told(answer)).toContain('| power.current-limit | 18 A | 6 A |');
        expect(answer).toMatchObject({ about: [uri] });
        house.change(uri, 2, [{ text: storing }]);
        expect(told(changesFor(house, uri, [{ uri, text: storing }], 'the last commit'))).toContain('Nothing that counts differs');
    });
    it('read what the rig used then, also what it uses no longer', async () => {
        const page = 'tube pipe { length: 2 m   size: 6x1 mm }\n';
        const { house, uri } = open(`use "now.rig"\n${edited}`.replace(/^(use .*)\n(rig .*)/, '$2\n$1'), { others: { 'now.rig': 'tube pipe { length: 3 m   size: 6x1 mm }\n' } });
        const asked: string[] = [];
        const old = new Map([[uri, storing.replace('\n', '\nuse "then.rig"\n')], [uri.replace(/[^/]*$/, 'then.rig'), page]]);
        const answer = await gather(async then => changesFor(house, uri, then, 'the last commit') as { needs: string[] } | { answer: object }, async file => {
            asked.push(file);
            return old.get(file);
        });
        expect(asked).toEqual([uri, uri.replace(/[^/]*$/, 'then.rig')]);
        expect(told(answer)).toContain('| pipe.length | 2 m | 3 m |');
    });
    it('say where there is no such file in it, and end where texts are never found', async () => {
        const { house, uri } = open(storing);
        expect(changesFor(house, uri, [{ uri, text: null }], 'the last commit')).toEqual({ cannot: expect.stringMatching(/ is not in the last commit\.$/) });
        expect(changesFor(house, 'file:///nobody.rig', [], 'x')).toBeNull();
        expect(await gather(async () => ({ needs: ['a'] }), async () => undefined)).toBeNull();
    });
});
describe('two open rigs, and variants', () => {
    it('stand side by side', () => {
        const { house, uri } = open(storing);
        const other = uri.replace(/[^/]*$/, 'other.rig');
        house.open(other, storing.replace('cells: 11', 'cells: 12'), 1);
        const answer = compareOpenFor(house, uri, other);
        expect(told(answer)).toContain('| stack.cells | 11 | 12 |');
        expect(answer).toMatchObject({ about: [uri, other] });
        expect(compareOpenFor(house, uri, uri)).toEqual({ cannot: expect.stringContaining('one rig') });
        expect(compareOpenFor(house, uri, 'file:///nobody.rig')).toBeNull();
    });
    it('say how a variant is written where there is none', () => {
        const { house, uri } = open(storing);
        expect(variantsFor(house, uri)).toEqual({ cannot: expect.stringContaining('variant winter { site.coldest: -12 °C }') });
        house.change(uri, 2, [{ text: `${storing}variant half { power.current-limit: 9 A }\n` }]);
        expect(told(variantsFor(house, uri))).toMatch(/\| number \| as written \| half \|/);
    });
});
