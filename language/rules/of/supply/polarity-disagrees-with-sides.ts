import { defineRule } from '../../define.js';

export default defineRule({
    name: 'polarity-disagrees-with-sides',
    family: 'electrical supply',
    severity: 'error',
    summary: 'Plus and minus do not fit the side into which the hydrogen channel opens: it would fill with oxygen.',
    why: 'Hydrogen is made at minus. Swapped, the bag and the compressor get oxygen, and then both.',
    source: 'topology: in every cell the plate nearer to plus is its anode',
    guardsLife: true,
    on: 'stack',
    check(v, tell) {
        const plus = v.word('plus-end');
        const half = v.word('hydrogen-half');
        if (!(plus === 'left' || plus === 'right') || !half || half !== plus) return;
        const other = plus === 'left' ? 'right' : 'left';
        tell({
            at: v.at('hydrogen-half'), related: [{ span: v.at('plus-end'), message: 'plus is here' }],
            message: `Plus is on the ${plus}, so the ${plus} half of every cell makes oxygen; the hydrogen channel opens into that half. ` +
                `It must open into the ${other} one, or the leads must change places.`,
        });
    },
});
