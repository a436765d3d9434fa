import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'gas-cost-below-power-cost',
    family: 'money',
    severity: 'error',
    summary: 'The gas is said to cost less than the electricity that makes it.',
    why: 'The electricity is the floor; water, wear and parts come on top.',
    source: 'balance of energy; 5 % for rounding: common practice, no source',
    on: 'claim',
    check(v, tell) {
        const budget = v.the('budget');
        const entry = budget && v.part.entries.get(`${budget.name}.gas-cost`);
        const said = entry && tell.workings.amountOf(entry)?.si;
        const floor = budget?.maybeQ('electricity-cost') ?? NaN;
        if (!budget || !entry || !(said! < 0.95 * floor)) return;
        const unit = budget.given('tariff').facts.get('')?.amount?.unit?.text.split('/')[0] ?? 'EUR';
        tell({ at: entry.span, message: `The electricity alone costs ${show(floor, `${unit}/m3`)}; ${show(said!, `${unit}/m3`)} is stated.`, related: [{ span: budget.at('tariff'), message: 'the tariff' }] });
    },
});
