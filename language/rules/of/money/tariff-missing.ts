import { defineRule } from '../../define.js';

export default defineRule({
    name: 'tariff-missing',
    family: 'money',
    severity: 'hint',
    summary: 'No price of electricity is given, so no cost can be told.',
    why: 'It differs tenfold from place to place, and no currency is taken for granted.',
    source: 'common practice, no source',
    on: 'budget',
    check(v, tell) {
        if (v.says('tariff') !== 'silent') return;
        const asked = v.rig.expects.find(e => new RegExp(`\\b${v.name}\\.`).test(e.text));
        if (v.part.implied && !asked) return;
        tell({ at: v.part.implied ? asked!.span : v.at(), message: 'Without a tariff only kilowatt-hours can be told, no cost.' });
    },
});
