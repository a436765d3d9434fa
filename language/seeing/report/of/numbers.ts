import { isKeyNumber } from '../../../reference/quantities.js';
import { showResult, showSpread } from '../../../reference/values.js';
import { cut, defineSection, spaced, table, words } from '../define.js';
import type { Row } from '../page.js';

const MOST = 250;

export default defineSection({
    name: 'numbers', title: 'Key numbers', order: 60, page: 'own', lead: 'What was worked out from the description, part by part; 95 of 100 rigs described like this should lie within the ±.',
    make: ({ results, hidden }) => {
        const { shown, rest } = cut(results.filter(r => isKeyNumber(r) && !hidden.has(r.part.name)), MOST, left => `And ${left} more: rigwright show lists them.`);
        const rows: Row[] = [];
        let part = '';
        for (const r of shown) {
            if (r.part.name !== part) {
                part = r.part.name;
                rows.push({ group: part === r.part.kindWord ? part : `${part} (${spaced(r.part.kindWord)})` });
            }
            rows.push([[spaced(r.quantity.name), r.quantity.meaning], showResult(r), showSpread(r)]);
        }
        if (!rows.length) return [words('No number is known yet: too little is described.')];
        return [
            ...table(['number', 'value', '±'], rows, [1, 2]), ...rest,
            words('NL, and the m3 of a price or an energy: gas at 0 °C and 101.325 kPa, dry. Pressures are above that of the air outside. Where no ± stands, nothing that the number rests on is told or assumed with one.', 'quiet'),
        ];
    },
});
