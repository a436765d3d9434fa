import { definePlot } from '../define.js';
import { isSoft, ladderOf } from '../ladder.js';
import { pressurePoints } from '../set-points.js';

export default definePlot({
    name: 'pressures', order: 12, title: 'Pressures of the store in order',
    meaning: 'The same from half a bar up: set points, trips, reliefs and ratings with the gaps between.',
    needs: 'a cylinder, relief valves, switches or ratings with their pressures',
    show({ workings }) {
        const points = pressurePoints(workings).filter(p => !isSoft(p));
        return points.length ? ladderOf(points, 'bar') : 'No pressure of half a bar or more is told.';
    },
});
