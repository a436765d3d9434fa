import { describe, expect, it } from 'vitest';
import { dark, printed, sharp, sharpLight } from '../../language/seeing/palette.js';
import { el, escaped, picture, together } from '../../language/seeing/svg.js';

describe('markup', () => {
    it('escapes whatever comes from a rig, in text and in attributes', () => {
        expect(el('text', { title: '"><script>' }, '<b> & \'x\'').text).toBe('<text title="&#34;&#62;&#60;script&#62;">&#60;b&#62; &#38; &#39;x&#39;</text>');
        expect(escaped('a\u0000b\u001bc')).toBe('a\ufffdb\ufffdc');
    });
    it('leaves out what is not there, and keeps elements as they are', () => {
        expect(el('g', { x: 1 / 3, y: undefined, z: false }, undefined, false, el('path', { d: 'M0 0' })).text).toBe('<g x="0.33"><path d="M0 0"/></g>');
        expect(together('a', el('br')).text).toBe('a<br>');
    });
    it('a picture tells what it is', () => {
        expect(picture('p', 10, 20, 'T', 'D').text).toContain('role="img" aria-labelledby="p-title p-desc"');
    });
});
describe('colours', () => {
    const channel = (n: number) => (n / 255 <= 0.03928 ? n / 255 / 12.92 : ((n / 255 + 0.055) / 1.055) ** 2.4);
    const light = (hex: string) => [1, 3, 5].map(i => channel(parseInt(hex.slice(i, i + 2), 16))).reduce((sum, c, i) => sum + c * [0.2126, 0.7152, 0.0722][i], 0);
    it('can be read on their paper: 4.5 to 1, high contrast 7 to 1 (WCAG 2.2, 1.4.3 and 1.4.6)', () => {
        for (const [palette, least] of [[printed, 4.5], [dark, 4.5], [sharp, 7], [sharpLight, 7]] as const) {
            for (const [name, colour] of Object.entries(palette)) {
                if (['paper', 'faint', 'wash'].includes(name)) continue;
                for (const ground of [palette.paper, palette.wash]) {
                    const [a, b] = [light(colour), light(ground)].sort((x, y) => y - x);
                    expect((a + 0.05) / (b + 0.05), `${name} ${colour} on ${ground}`).toBeGreaterThan(least);
                }
            }
        }
    });
});
