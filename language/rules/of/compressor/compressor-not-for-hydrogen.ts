import { defineRule } from '../../define.js';

export default defineRule({
    name: 'compressor-not-for-hydrogen',
    family: 'compressor',
    severity: 'warning',
    summary: 'The compressor was not made for hydrogen.',
    why: 'Its start relay, its overload switch and its capacitor can each make a spark, the motor stands in the gas, and no maker allows it.',
    source: 'common practice, no source',
    guardsLife: true,
    on: 'compressor',
    check(v, tell) {
        if (v.yes('listed-for-hydrogen')) return;
        const media = v.paths.mediaOf(v.name);
        if (media.size && !media.has('hydrogen')) return;
        tell({ at: v.part.entries.has('listed-for-hydrogen') ? v.at('listed-for-hydrogen') : v.at(), message: `${v.name} is not made for hydrogen: start relay, overload and capacitor can spark, and the air in its shell must go first.` });
    },
});
