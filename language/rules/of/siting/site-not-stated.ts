import { defineRule } from '../../define.js';

export default defineRule({
    name: 'site-not-stated',
    family: 'siting',
    severity: 'warning',
    summary: 'Nothing is said of the place.',
    why: 'Outdoors hydrogen is gone in seconds; under a ceiling it waits for a spark. Half of all checks need the place.',
    source: 'ISO/TR 15916',
    guardsLife: true,
    from: 'drawn',
    on: 'stack',
    check(v, tell) {
        const site = v.the('site');
        if (site?.word('place')) return;
        tell({ at: site && !site.part.implied ? site.at() : v.at(), message: 'Where does it stand? site { place: … } says it; without it no check of ventilation, people and ignition is possible.' });
    },
});
