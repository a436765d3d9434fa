import { kind, quantity } from '../define.js';

export default kind({
    name: 'budget',
    doc: 'Money: what a kilowatt hour costs, what the rest costs, how long it lasts.',
    group: 'world',
    single: true,
    always: true,
    properties: {
        tariff: quantity('money-per-energy', 'Price of electricity. No currency is taken for granted.', { usual: '0.001 EUR/kWh..2 EUR/kWh', example: '${1:0.30 EUR/kWh}' }),
        life: quantity('time', 'Hours over which the parts are spread.', { assume: ['2000 h', 'a few years of afternoons', '± 50 %'], unit: 'h', usual: '10 h..100000 h' }),
        'hours-per-year': quantity('time', 'Hours that it runs in a year.', { unit: 'h', usual: '1 h..8760 h' }),
        'bought-gas': quantity('money-per-gas', 'What bought gas costs.', { example: '${1:9 EUR/m3}' }),
        other: quantity('money', 'All that has no price in the text.', { example: '${1:150 EUR}', positive: false }),
        total: quantity('money', 'What all of it is said to cost: a check on the sum.', { fact: true }),
    },
    template: ['tariff: ${1:0.30 EUR/kWh}', 'life: ${2:2000 h}'],
});
