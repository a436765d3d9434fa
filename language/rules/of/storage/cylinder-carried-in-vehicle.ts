import { defineRule } from '../../define.js';
import { show } from '../../../units/format.js';

export default defineRule({
    name: 'cylinder-carried-in-vehicle',
    family: 'storage',
    severity: 'warning',
    summary: 'Filled cylinders or balloons are carried by car.',
    why: 'A car is a small shut room with people and switches in it. A valve that weeps, or the sun on the roof, is enough.',
    source: '4 % lower limit: ISO/TR 15916; a boot of 0.4 m³: common practice, no source; carriage of gas cylinders falls under dangerous-goods law, with reliefs for small loads',
    guardsLife: true,
    on: 'routine',
    check(v, tell) {
        if (v.yes('carried') !== true) return;
        const [first] = [...v.all('cylinder'), ...v.all('balloon')].filter(s => s.paths.mediaOf(s.name).has('hydrogen'));
        const gas = first?.kind === 'cylinder' ? first.maybeQ('stored-gas') : NaN;
        tell({
            at: v.at('carried'), message: `${first ? first.name : 'What is filled'} is carried by car: in the 0.4 m3 of a boot 16 L of hydrogen already burn${gas === gas ? `, and ${first.name} holds ${show(gas, 'NL')}` : ''}.`,
            related: first ? [{ span: first.at(), message: 'what is carried' }] : [],
        });
    },
});
