import { resultText } from '../../../reference/values.js';
import { defineSection, spaced, table, words } from '../define.js';
import type { Row } from '../page.js';

export default defineSection({
    name: 'cost', title: 'Cost', order: 140, lead: 'Prices as the description has them, and what a m3 of gas comes to; what has no price there is not counted.',
    make: a => {
        const rows: Row[] = [];
        let unpriced = 0;
        let left = 0;
        let currency = '';
        for (const v of a.workings.allViews()) {
            if (v.pattern || v.declared?.statement || !v.declared?.properties.price) continue;
            const fact = v.given('price').facts.get('');
            if (!fact) unpriced++;
            else if (a.hidden.has(v.name)) left += fact.number;
            else rows.push([v.name === v.kind ? v.name : `${v.name} (${spaced(v.kind)})`, v.given('price').entry?.value?.text ?? '']);
            currency ||= fact?.amount?.unit?.text ?? '';
        }
        const [budget] = a.workings.partsOf('budget');
        const other = budget?.given('other').entry?.value?.text;
        if (other) rows.push(['everything else', other]);
        if (left > 0) rows.push(['the store and what fills it, not described here', `${left} ${currency}`]);
        if (rows.length) rows.unshift({ group: 'Parts' });
        const sums = a.results.filter(r => r.part.kindWord === 'budget').map((r): Row => [[spaced(r.quantity.name), r.quantity.meaning], resultText(r)]);
        if (sums.length) rows.push({ group: 'What follows' }, ...sums);
        for (const key of ['tariff', 'life', 'hours-per-year', 'bought-gas'] as const) {
            const given = budget?.given(key);
            const text = given?.entry?.value?.text ?? given?.assumedText;
            if (text && sums.length) rows.push([key === 'tariff' ? 'taken: a kilowatt-hour' : `taken: ${spaced(key)}`, given!.status === 'assumed' ? `${text}, assumed: ${given!.because}` : text]);
        }
        return rows.length ? [...table(['what', 'amount'], rows), ...(unpriced ? [words(`${unpriced} parts have no price of their own.`, 'quiet')] : [])] : [words('No price and no tariff is described.')];
    },
});
