/** The words of the language that are no part, property or quantity, each with what it does. */
import { stages, type Stage } from '../rig/rig.js';

export const stageMeanings: Readonly<Record<Stage, string>> = {
    idea: 'Nothing exists yet. What is not said is assumed openly, and only the next decisions are asked for.',
    drawn: 'The rig is on paper. Dimensions and safeguards are asked for; tests and records are kept in one list of things to do before first gas.',
    built: 'It stands, without gas so far. Every safeguard, every test and what the controls do when they fail must be said.',
    running: 'It makes gas. As built; records of tests and service must be there and not too old.',
    retired: 'It makes no gas any more. What is still in it is what matters.',
};

/** Words that start a line or stand in a value, path ends, media and stages; Markdown. */
export const frameWords: Readonly<Record<string, string>> = {
    rig: 'The first line of a rig: `rig "Title", drawn`. After the comma stands how far it is: idea, drawn, built, running or retired.',
    library: 'First line of a file of patterns: `library "Title"`. A pattern is in no rig until `like` names it.',
    use: '`use "parts.rig"` reads another file beside this one; `use parts`, without quotes, a library shipped with Rigwright.',
    let: '`let spare = 0.9 * bag.rating` names a value. It is worked out with its units, and may be used in any value below or above.',
    path: '`path hydrogen: stack -> h2-column -> bag` says what is joined to what, in order. It carries hydrogen, oxygen, lye, water or current. A branch is a further line that starts or ends at a part which stands on one already. It may end outdoors or in the room.',
    expect: '`expect stack.voltage < 30 V` is your own requirement, checked while you type. `between 1.9 V and 2.2 V` is read too. Expectations over time (`always`, `never`, `at 18:00`, `before 12:00`, `during SCENARIO: …`, `if … lost: within 2 s …`) are held against a run: by `rigwright run` and when you point at them. `expect with winter: …` is of the rig with that variant laid over it, at rest or through a usual day.',
    allow: '`allow rule-name on part until 2027-01-31 by name because "reason"` turns a finding down. One that guards life leaves a reminder.',
    weigh: '`weigh rule-name as warning because "reason"` gives all findings of a rule another weight: nothing, hint, warning or error. In a library it holds for every rig that uses it. What guards a life is never made lighter.',
    like: '`column o2-column like h2-column { }` copies the properties of another part of the same kind; what stands in the braces differs. Places on paths are not copied.',
    none: '`rcd: none` says that there is no such thing. It answers the question; silence does not.',
    unknown: '`fire-card: unknown` says that somebody looked and could not find out. It counts as not said, and keeps the line as a reminder.',
    '±': '`27.2 V ± 0.1 V` or `12 V ± 2 %` is a tolerance; `+/-` is read as well. It is carried through to what is worked out.',
    '..': '`40 %..85 %` is a range, both ends included.',
    x: '`140 x 180 x 1 mm` is a size. A bare number takes the next unit to its right.',
    of: '`2 of 6 mm` counts: two of 6 mm each.',
    at: '`23.4 V at 45 A` is a point on a curve; `4 °C at 15:30` a value at a time of day. More points follow after a comma.',
    outdoors: 'An end of a path: the gas goes into the open air.',
    room: 'An end of a path: the gas goes into the room where the rig stands.',
    plugged: 'An end of a path: closed with a plug.',
    tap: 'A beginning of a water path: the house supply.',
    drain: 'An end of a water path.',
    mains: 'A beginning of a current path: the house supply.',
    user: 'An end of a path: whoever or whatever uses the gas, not described further.',
    hydrogen: 'A medium of paths: `path hydrogen: …`. Made at minus.',
    oxygen: 'A medium of paths: `path oxygen: …`. Made at plus, half as much as hydrogen. What touches it must be clean of oil and grease.',
    current: 'A medium of paths: `path current: …`, from the supply to the stack. The way back is the same and is not written.',
    ...Object.fromEntries(stages.map(s => [s, `A stage, on the title line: ${stages.join(', ')}. ${stageMeanings[s]}`])),
};
