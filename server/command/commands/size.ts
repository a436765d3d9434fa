import { sizeFor, waysTo } from '../../../language/what-if/size.js';
import { CannotDo, type Command } from '../command.js';
import { one, tryOrSay } from '../one-rig.js';
import { version } from '../version.js';

const size: Command = {
    name: 'size',
    summary: 'Finds what one number must be so that an expectation holds.',
    args: 'FILE',
    most: 1,
    options: {
        for: { type: 'string', takes: 'EXPECT', doc: 'what shall hold: "cylinder.fill-time < 3 h"' },
        by: { type: 'string', takes: 'PART.PROPERTY', doc: 'the number that may change: stack.gap; all that would do if left out' },
        between: { type: 'string', takes: 'RANGE', doc: 'where to look: "1..6 mm"; around what is usual if left out' },
        format: { type: 'string', takes: 'FORM', default: 'text', choices: ['text', 'json'], doc: 'form of the output' },
        on: { type: 'string', takes: 'DATE', doc: 'day that dates are compared with, today if left out' },
    },
    examples: ['rigwright size shed.rig --for "stack.volts-per-cell < 2 V" --by stack.wetted', 'rigwright size shed.rig --for "store-bag.fill-time > 30 min" --by store-bag.volume'],
    async run({ options, args }, around) {
        if (typeof options.for !== 'string') throw new CannotDo('size takes --for EXPECT, and --by PART.PROPERTY for one number that may change.');
        const { analysis, raises } = one(args, options.on, around, 'size');
        if (options.by === undefined) {
            const ways = tryOrSay(() => waysTo(analysis.workings, String(options.for)));
            if (options.format === 'json') {
                around.out(`${JSON.stringify({ version, for: options.for, ways: ways.map(w => ({ by: w.input.name, value: w.text, si: w.value, side: w.side, gives: w.gives })) }, null, 2)}\n`);
            } else {
                const width = Math.max(0, ...ways.map(w => w.input.name.length));
                around.out(ways.length ? `${ways.map(w => `${w.input.name.padEnd(width)}  ${w.side === 'just there' ? '' : `${w.side} `}${w.text}  (now ${w.input.say(w.input.now)}; gives ${w.gives})`).join('\n')}\n` : 'It holds as it stands, or no single number is enough.\n');
            }
            return ways.length ? 0 : 1;
        }
        const found = tryOrSay(() => sizeFor(analysis.workings, String(options.for), String(options.by), options.between === undefined ? undefined : String(options.between)));
        const then = found.fix ? raises(found.fix) : [];
        if (options.format === 'json') {
            around.out(`${JSON.stringify({
                version, for: options.for, by: found.input.name, already: found.already, value: found.text ?? null, si: found.value ?? null, side: found.side ?? null, now: found.now, gives: found.gives ?? null,
                why: found.why ?? null, raises: then.map(f => ({ rule: f.rule, severity: f.severity, message: f.message })),
                text: found.fix ? found.fix.edits.map(e => e.text.trim()).join('\n') : null,
            }, null, 2)}\n`);
        } else {
            const out: string[] = [];
            if (found.already) out.push(`It holds as it stands: ${found.now}.`);
            else if (found.text === undefined) out.push(`${options.for}: ${found.now} as it stands.`, found.why ?? '');
            else {
                out.push(`${found.input.name}: ${found.side === 'just there' ? '' : `${found.side} `}${found.text}`, `That gives ${found.gives}; as it stands it is ${found.now}${found.input.now === found.input.now ? ` with ${found.input.say(found.input.now)}` : ''}.`);
                if (!found.fix) out.push('It is a fact of the world, or stands in no text of this rig: it is not written for you.');
                for (const f of then) out.push(`Then it tells ${f.rule}: ${f.message}`);
            }
            around.out(`${out.join('\n')}\n`);
        }
        return found.already || found.text !== undefined ? 0 : 1;
    },
};
export default size;
