import { defineRule } from '../../define.js';

export default defineRule({
    name: 'compressor-not-for-hydrogen',
    family: 'compressor',
    severity: 'warning',
    summary: 'The compressor was not made for hydrogen.',
    why: 'Its start gear can spark, its shell holds air at first, its oil and seals were chosen for another gas.',
    source: 'EN 1012-3 for process gas compressors; IEC 60079-10-1 for the zone; from memory',
    guardsLife: true,
    on: 'compressor',
    check(v, tell) {
        if (v.yes('listed-for-hydrogen')) return;
        const media = v.paths.mediaOf(v.name);
        if (media.size && !media.has('hydrogen')) return;
        tell({ at: v.says('listed-for-hydrogen') === 'stated' ? v.at('listed-for-hydrogen') : v.at(), message: `${v.name} is not said to be made for hydrogen: its start gear, its oil and the air in its shell each need an answer.` });
    },
});
