import { defineRule } from '../../define.js';

export default defineRule({
    name: 'vessel-not-for-hydrogen',
    family: 'storage',
    severity: 'error',
    summary: 'The vessel was not made for hydrogen.',
    why: 'Hard steel grows brittle in hydrogen, thin walls and soft seats leak it, and the test body never saw it so filled.',
    source: 'ISO 11114-1 and ISO 11621 for change of gas service, from memory',
    guardsLife: true,
    on: 'cylinder',
    check(v, tell) {
        const sort = v.word('sort');
        const said: Record<string, string> = {
            disposable: 'A disposable cylinder has thin walls and may not be filled again.', LPG: 'A cylinder for liquefied gas bears little, has another valve, and keeps fuel and odorant inside.',
            extinguisher: 'An extinguisher is no store for gas under steady pressure.', scuba: 'A diving cylinder is hard steel or aluminium made and tested for air.',
            'air-receiver': 'An air receiver rusts inside and is stamped for air.', 'home-made': 'A vessel made at home bears what nobody knows; welding a pressure vessel is licensed work.',
            'industrial-gas': '',
        };
        if (sort && said[sort]) {
            tell({ at: v.at('sort'), message: `${said[sort]} Only a test body can pass it for hydrogen.` });
            return;
        }
        const gas = v.given('permitted-gas').facts.get('')?.text;
        if (gas && !/hydrogen|\bH2\b/i.test(gas)) tell({ at: v.at('permitted-gas'), message: `It is stamped for ${gas}, not for hydrogen.` });
    },
});
