/**
 * What commands print with `--format json`, as JSON Schema (draft 2020-12): one schema for each command. Whoever reads the output with a
 * program can hold it against these; a member that is not in them is a mistake of ours, and a test looks for it. A change that a reader would
 * stumble over raises `EDITION`.
 */
export const EDITION = 1;

export type Schema = { readonly [key: string]: unknown };

// ---- building blocks -------------------------------------------------------------------------------------------------

const string: Schema = { type: 'string' };
const number: Schema = { type: 'number' };
const boolean: Schema = { type: 'boolean' };
const count: Schema = { type: 'integer', minimum: 0 };
const orNull = (s: Schema): Schema => ({ ...s, type: [s.type, 'null'] });
const maybe = (s: Schema): Schema => ({ anyOf: [s, { type: 'null' }] });
const listOf = (items: Schema): Schema => ({ type: 'array', items });
const oneOf = (...names: string[]): Schema => ({ type: 'string', enum: names });
const told = (description: string, s: Schema): Schema => ({ ...s, description });
/** Members are all there, but for those whose names end with ?. */
function object(members: Readonly<Record<string, Schema>>): Schema {
    const names = Object.keys(members);
    return {
        type: 'object', properties: Object.fromEntries(names.map(n => [n.replace(/\?$/, ''), members[n]])),
        required: names.filter(n => !n.endsWith('?')), additionalProperties: false,
    };
}
const byName = (values: Schema): Schema => ({ type: 'object', additionalProperties: values });

const severity = oneOf('error', 'warning', 'hint');
const position = object({ line: told('from 0', count), character: told('from 0, in UTF-16 units', count) });
const range = object({ start: position, end: position });
const brief = object({ rule: string, severity, message: string });
const seconds = told('s', number);

const quantity = object({
    name: told('part.quantity', string), value: told('in unit; null where it is not known', orNull(number)), unit: string, si: orNull(number),
    status: oneOf('stated', 'assumed', 'measured', 'computed', 'unknown'), plusMinus: told('wider half of the bounds, in unit', orNull(number)), low: told('in unit', orNull(number)), high: orNull(number), source: string,
    'openBy?': told('what the bounds come from, most first', listOf(object({ name: string, told: string, share: told('of the variance', number) }))),
});
const finding = object({
    file: string, rule: string, severity, message: string, why: string, source: string, range,
    related: listOf(object({ file: string, range, message: string })),
    fixes: listOf(object({ title: string, keepsMeaning: boolean, edits: listOf(object({ file: string, range, text: string })) })),
});
/** A finding of a comparison, by its part and line, since places move. */
const placed = object({ rule: string, severity, part: orNull(string), line: orNull(count), message: string });
const line = object({ name: string, values: listOf(maybe(object({ value: orNull(number), unit: string, plusMinus: orNull(number) }))), twins: listOf(string) });
const named = object({ name: string, title: string });
const outcome = oneOf('hazard', 'escapes', 'caught', 'stops', 'unseen');

// ---- the commands ----------------------------------------------------------------------------------------------------

const outputs: Readonly<Record<string, { readonly says: string; readonly members: Readonly<Record<string, Schema>> }>> = {
    show: {
        says: 'Numbers of a rig, what was assumed, and what is near a limit.',
        members: {
            quantities: listOf(quantity),
            assumptions: listOf(object({ name: string, value: told('as it would be written', string), because: string, source: string })),
            near: listOf(object({ rule: string, part: string, 'key?': string, number: told('SI', number), limit: told('SI', number), unit: told('in which it is told', string), side: oneOf('at most', 'at least'), left: told('share of the limit', number) })),
        },
    },
    check: { says: 'Findings of all rigs that were checked.', members: { findings: listOf(finding) } },
    run: {
        says: 'A rig followed through a stretch of time.',
        members: {
            scenario: told('null for the usual day', orNull(string)), starts: told('s after midnight', number),
            events: listOf(object({ time: seconds, clock: string, cause: string, then: listOf(string), sort: oneOf('act', 'control', 'trip', 'hazard', 'relief', 'note'), parts: listOf(string) })),
            series: { type: 'object', properties: { time: listOf(number) }, required: ['time'], additionalProperties: object({ unit: string, values: listOf(orNull(number)) }) },
            hazards: listOf(object({ time: seconds, hazard: string, part: string, message: string })),
            final: told('states at the end, SI', byName(number)), ended: object({ time: seconds, early: told('why, if it ended before its time', orNull(string)) }),
            notes: told('what it leaves out', listOf(string)), expected: listOf(object({ text: string, holds: orNull(boolean), time: orNull(number), message: string })),
        },
    },
    faults: {
        says: 'One thing broken after the other, each guard taken away, and what nothing shows beside a second failure.',
        members: {
            healthy: told('hazards with nothing broken', listOf(object({ time: seconds, hazard: string, message: string }))),
            faults: listOf(object({
                part: string, way: string, outcome, time: told('s from the failure to the hazard', orNull(number)), earliest: told('the same, as early as the bounds leave open', orNull(number)), hazard: orNull(string), message: orNull(string),
                escaped: told('mol of hydrogen', orNull(number)), 'caught-by': orNull(string), 'caught-after': orNull(number), story: listOf(string), help: orNull(string),
            })),
            guards: listOf(object({ name: string, without: listOf(object({ part: string, way: string, outcome, hazard: orNull(string), 'caught-by': orNull(string) })) })),
            hidden: listOf(object({ part: string, ways: listOf(string), 'test-each': string, test: string, seconds: listOf(object({ part: string, way: string, time: seconds, hazard: string, message: string })) })),
            'not-followed': listOf(string), notes: listOf(string),
        },
    },
    compare: {
        says: 'What a change does to a rig; with variants the rig beside each of them.',
        members: {
            'before?': named, 'after?': named, 'added?': listOf(string), 'removed?': listOf(string),
            'changed?': listOf(object({ name: string, before: orNull(string), after: orNull(string), like: told('parts that change with it', listOf(string)) })),
            'headlines?': told('the few numbers by which a rig is known, moved or not; of variants a value for each column', listOf({ anyOf: [object({ name: string, before: orNull(string), after: orNull(string), moved: boolean, share: told('of the earlier one', orNull(number)) }), line] })),
            'moved?': listOf(object({ name: string, before: string, after: string, share: orNull(number), within: told('by less than its bounds', boolean), twins: listOf(string) })), 'appeared?': listOf(string), 'vanished?': listOf(string),
            'come?': listOf(placed), 'gone?': listOf(placed), 'other?': listOf(object({ before: placed, after: placed })),
            'nearer?': listOf(object({ rule: string, part: string, left: told('share of the limit', orNull(number)), before: orNull(number) })), 'again?': listOf(object({ what: string, stale: told('records that no longer hold', listOf(string)) })),
            'title?': string, 'columns?': listOf(object({ name: string, says: listOf(string) })), 'differing?': listOf(line), 'findings?': listOf(object({ rule: string, at: listOf(maybe(placed)) })), 'shared?': count,
        },
    },
    sweep: {
        says: 'Numbers over others that are varied.',
        members: { columns: listOf(object({ name: string, unit: string })), rows: listOf(listOf(orNull(number))) },
    },
    corners: {
        says: 'The rig at the ends of what its surroundings and its use may be.',
        members: { corners: listOf(object({ name: string, meaning: string, skipped: orNull(string), breaks: listOf(brief), numbers: listOf(quantity) })) },
    },
    size: {
        says: 'The value by which an expectation is met; without --by every single number that can meet it.',
        members: {
            for: string, 'ways?': listOf(object({ by: string, value: string, si: number, side: string, gives: string })),
            'by?': string, 'already?': boolean, 'value?': orNull(string), 'si?': orNull(number), 'side?': orNull(string), 'now?': string, 'gives?': orNull(string), 'why?': orNull(string), 'raises?': listOf(brief), 'text?': orNull(string),
        },
    },
    rules: {
        says: 'All rules; with a file what each takes on it.',
        members: {
            rules: listOf(object({ 'name?': string, 'severity?': severity, 'family?': string, 'summary?': string, 'source?': string, 'rule?': string, 'microseconds?': number })),
            'microseconds?': number,
        },
    },
};
/** Commands that have one. */
export const schemas: readonly string[] = Object.keys(outputs).sort();

/** The schema of what a command prints; undefined where it prints no JSON. */
export function schemaOf(command: string): Schema | undefined {
    const found = Object.hasOwn(outputs, command) ? outputs[command] : undefined;
    return found && {
        $schema: 'https://json-schema.org/draft/2020-12/schema', $id: `urn:rigwright:${command}:${EDITION}`, title: `rigwright ${command} --format json`, description: found.says,
        ...object({ version: told('of the program', string), ...found.members }),
    };
}
