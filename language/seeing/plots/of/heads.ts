import { definePlot } from '../define.js';
import { isSoft, ladderOf } from '../ladder.js';
import { pressurePoints } from '../set-points.js';

export default definePlot({
    name: 'heads', order: 11, title: 'Heads and seals in order',
    meaning: 'All pressures of the low side on one scale: what the gases push against, what acts, what lets go, what bears how much, with the gaps between.',
    needs: 'seals, bubblers, a bag or switches with their pressures',
    show({ workings }) {
        const points = pressurePoints(workings).filter(isSoft);
        return points.length ? ladderOf(points, 'kPa') : 'No pressure below half a bar is told or follows from what is told.';
    },
});
