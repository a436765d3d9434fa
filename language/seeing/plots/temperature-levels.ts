/** What must not get warmer, and what acts before: lines across a plot of temperature. */
import type { View } from '../../quantities/view.js';
import { show } from '../../units/format.js';
import { inUnit } from './ask.js';
import type { Level } from './figure.js';
import type { SetPoint } from './set-points.js';

export function temperatureLevels(stack: View, points: readonly SetPoint[]): Level[] {
    const most = stack.maybe('max-temperature');
    const level = (at: number, words: string): Level => ({ y: inUnit(at, '°C'), label: `${words} ${show(at, '°C')}`, ink: 'error' });
    return [
        ...(most === most ? [level(most, `most allowed${stack.says('max-temperature') === 'assumed' ? ' (assumed)' : ''}`)] : []),
        ...points.filter(s => s.senses === `${stack.name}.temperature` && s.sort === 'trip').map(s => level(s.at, `${s.part} ${s.says}`)),
    ];
}
