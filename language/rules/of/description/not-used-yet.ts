import { defineRule } from '../../define.js';
import type { Span } from '../../../rig/rig.js';

export default defineRule({
    name: 'not-used-yet',
    family: 'the description',
    severity: 'hint',
    summary: 'Something is read, but nothing is worked out from it yet.',
    why: 'You should know which lines already count in the numbers and findings, and which only wait.',
    source: 'what this version does',
    on: 'rig',
    check(v, tell) {
        for (const page of v.rig.pages) {
            const places: { span: Span; what: keyof typeof several }[] = [];
            for (const part of page.parts) {
                if (part.kindWord in several && !part.pattern) places.push({ span: part.kindSpan, what: part.kindWord as keyof typeof several });
            }
            if (!places.length) continue;
            places.sort((a, b) => a.span.start - b.span.start);
            const counts = Object.entries(several).flatMap(([what, [one, more]]) => {
                const n = places.filter(p => p.what === what).length;
                return n ? [`${n} ${n === 1 ? one : more}`] : [];
            });
            tell({ at: places[0].span, message: `Read and checked for slips; nothing is worked out from it yet: ${counts.join(', ')}.` });
        }
    },
});

const several = {
    log: ['log', 'logs'], calibration: ['calibration', 'calibrations'],
} as const;
