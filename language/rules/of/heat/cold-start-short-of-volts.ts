import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'cold-start-short-of-volts',
    family: 'heat',
    severity: 'hint',
    summary: 'On a cold morning only part of the usual current flows at first.',
    why: 'Cold lye conducts less and the electrodes are slower. Little current makes impure gas: it belongs outdoors until ' +
        'the current is up.',
    source: 'operating point at the coldest of the site; seven tenths: common practice, no source',
    under: ['supply-below-reversible', 'supply-below-useful-voltage', 'supply-far-above-stack'],
    on: 'stack',
    check(v, tell) {
        const cold = v.maybeQ('current-cold');
        const usual = v.maybeQ('current');
        const site = v.the('site');
        if (!site || !tell.fallsShort(cold, 0.7 * usual, 'A', v, 'cells')) return;
        tell({
            at: v.the('supply')?.said('voltage') ? v.the('supply')!.at('voltage') : v.at('cells'),
            related: site.said('coldest') ? [{ span: site.at('coldest'), message: 'the coldest' }] : [],
            message: `At ${show(site.maybe('coldest'), '°C')} about ${show(cold, 'A', 2)} flows at first instead of ` +
                `${show(usual, 'A', 2)}: let that gas go outdoors until the current is up.`,
        });
    },
});
