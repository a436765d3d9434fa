import { kind, quantity } from '../define.js';

export default kind({
    name: 'budget',
    called: ['cost', 'costs', 'money'],
    doc: 'What it all costs. Prices of parts stand on the parts; here stands what belongs to none of them.',
    group: 'world',
    single: true,
    always: true,
    properties: {
        tariff: quantity('money-per-energy', 'Price of a kilowatt-hour at the plug. No currency is taken for granted.', { example: '${1:0.30 EUR/kWh}', positive: false }),
        other: quantity('money', 'Everything without a price of its own: hoses, wire, boxes.', { example: '${1:200 EUR}', positive: false }),
        total: quantity('money', 'The total as you added it up. It is compared with the sum of the prices.', { example: '${1:1200 EUR}' }),
        life: quantity('time', 'Hours of running over which the cost is spread.', { assume: ['2000 h', 'a careful home-made stack before its first overhaul', '± 1000 h'], usual: '50 h..60000 h', unit: 'h' }),
        'hours-per-year': quantity('time', 'Hours of running in a year.', { usual: '1 h..8766 h', unit: 'h', example: '${1:400 h}' }),
        'bought-gas': quantity('money-per-gas', 'What the same gas costs when bought, rent of the cylinder included.', { example: '${1:9 EUR/m3}' }),
    },
    template: ['tariff: ${1:0.30 EUR/kWh}', 'life: ${2:2000 h}', 'other: ${3:200 EUR}'],
});
