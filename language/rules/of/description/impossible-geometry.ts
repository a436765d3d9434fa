import { leastSurface } from '../../../quantities/walls.js';
import { show } from '../../../units/format.js';
import { defineRule } from '../../define.js';

export default defineRule({
    name: 'impossible-geometry',
    family: 'the description',
    severity: 'error',
    summary: 'Measures that cannot all be true of one thing: a window larger than its plate, a level above the lid.',
    why: 'It cannot be built so, and every number that rests on it is wrong.',
    source: 'geometry',
    on: 'rig',
    check(v, tell) {
        const mm = (n: number) => show(n, 'mm');
        const tooLarge = (a: number, b: number) => a > b * 1.0005 + 1e-6;
        for (const s of v.all('stack')) {
            const window = s.said('wetted') ? s.sizes('wetted') : undefined;
            const plate = s.said('plate') ? s.sizes('plate.size') : undefined;
            const cover = s.said('edge-cover') ? s.maybe('edge-cover', 0) : 0;
            if (window && plate && plate.length >= 2) {
                const sides = ['wide', 'high'] as const;
                const at = [0, 1].find(i => tooLarge(window[i], plate[i]));
                const covered = [0, 1].find(i => tooLarge(window[i] + 2 * cover, plate[i]));
                const related = [{ span: s.atSlot('plate.size'), message: 'the plate' }];
                if (at !== undefined) {
                    tell({
                        at: s.at('wetted'),
                        message: `The window is ${mm(window[at])} ${sides[at]}, the plate only ${mm(plate[at])}.`,
                        related,
                    });
                } else if (covered !== undefined) {
                    tell({
                        at: s.at('edge-cover'), related,
                        message: `A window ${mm(window[covered])} ${sides[covered]} with ${mm(cover)} covered all round needs ` +
                            `${mm(window[covered] + 2 * cover)}; the plate has ${mm(plate[covered])}.`,
                    });
                }
            }
            // A gasket or a board smaller than the window leaves a side of it open.
            for (const [key, what] of [['gasket', 'gasket'], ['end-board', 'end board']] as const) {
                const outline = s.said(key) ? s.sizes(`${key}.outline`) : undefined;
                const short = window && outline ? [0, 1].find(i => tooLarge(window[i], outline[i])) : undefined;
                if (short !== undefined) {
                    tell({
                        at: s.atSlot(`${key}.outline`), related: [{ span: s.at('wetted'), message: 'the window' }],
                        message: `The ${what} is ${mm(outline![short])} ${short === 0 ? 'wide' : 'high'}, the window that it is to close ${mm(window![short])}.`,
                    });
                }
            }
            const [free, pressed] = [s.maybe('gasket.free'), s.maybe('gasket.pressed')];
            if (tooLarge(pressed, free)) {
                tell({
                    at: s.at('gasket'),
                    message: `Pressed from ${mm(free)} to ${mm(pressed)}, the gasket would grow. Are the two swapped?`,
                });
            }
        }
        for (const c of v.all('column')) {
            const [height, level, port] = [c.maybe('height'), c.maybe('level'), c.maybe('return-port')];
            if (tooLarge(level, height) && (c.said('level') || c.said('height'))) {
                tell({
                    at: c.at('level'),
                    message: `The level of ${c.name}, ${mm(level)}, is above its lid at ${mm(height)}.`,
                });
            }
            if (tooLarge(port, level) && c.said('return-port')) {
                tell({
                    at: c.at('return-port'),
                    message: `A port ${mm(port)} under a level of ${mm(level)} lies below the foot of ${c.name}.`,
                });
            }
        }
        for (const l of v.all('link')) {
            const shallow = v.all('column').filter(c => c.said('level')).find(c => tooLarge(l.maybe('depth'), c.maybe('level')));
            if (shallow) {
                tell({
                    at: l.at('depth'),
                    message: `${mm(l.maybe('depth'))} under the level lies below the foot of ${shallow.name}, whose level stands at ` +
                        `${mm(shallow.maybe('level'))}.`,
                });
            }
        }
        for (const t of v.all('tube')) {
            const size = t.sizes('size');
            if (size && size.length >= 2 && 2 * size[1] >= size[0]) {
                tell({
                    at: t.at('size'),
                    message: `${t.name}: two walls of ${mm(size[1])} fill ${mm(size[0])}; no bore is left.`,
                });
            }
        }
        for (const b of v.all('bubbler')) {
            if (tooLarge(b.maybe('minimum'), b.maybe('immersion')) && b.said('minimum')) {
                tell({
                    at: b.at('minimum'),
                    message: `${b.name} is to be refilled at ${mm(b.maybe('minimum'))}, but stands at ${mm(b.maybe('immersion'))} when ` +
                        'full.',
                });
            }
        }
        for (const g of [...v.all('bag'), ...v.all('gasometer')]) {
            if (tooLarge(g.maybe('dead-volume'), g.maybe('volume'))) {
                tell({
                    at: g.at('dead-volume'),
                    message: `${g.name} holds ${show(g.maybe('volume'), 'L')}; more than that cannot stay in it.`,
                });
            }
            const [film, ball] = g.said('size') ? [g.maybeQ('film-area'), leastSurface(g.maybe('volume'))] : [];
            if (film! < 0.99 * ball!) {
                tell({
                    at: g.at('size'),
                    message: `The film of ${g.name}, ${show(film!, 'm2')}, cannot hold ${show(g.maybe('volume'), 'L')}: a ball of that volume needs ${show(ball!, 'm2')}.`,
                });
            }
        }
    },
});
