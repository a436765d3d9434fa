import { describe, expect, it } from 'vitest';
import { markdownToHtml } from '../../extension/markdown-to-html.js';

const html = (...lines: string[]) => markdownToHtml(lines.join('\n'), address => (address.startsWith('https:') ? address : undefined));

describe('a page', () => {
    it('has headings and paragraphs', () => {
        expect(html('# Volts per cell', '', 'One line', 'and the next.', '', 'Another.'))
            .toBe('<h1>Volts per cell</h1>\n<p>One line\nand the next.</p>\n<p>Another.</p>');
    });

    it('has bold, italic and code inside its sentences', () => {
        expect(html('**2.1 V** at *60 °C*, `stack.voltage`')).toBe('<p><strong>2.1 V</strong> at <em>60 °C</em>, <code>stack.voltage</code></p>');
        expect(html('hydrogen_rate_now and 2 * 3 * 4')).toBe('<p>hydrogen_rate_now and 2 * 3 * 4</p>');
        expect(html('2 \\* 3 \\* 4')).toBe('<p>2 * 3 * 4</p>');
    });

    it('has lists in lists', () => {
        expect(html('* cells: 7', '  * assumed', '    from the shelf', '* area', 'end'))
            .toBe('<ul><li>cells: 7<ul><li>assumed from the shelf</li></ul></li><li>area</li></ul>\n<p>end</p>');
        expect(html('1. open', '2. shut')).toBe('<ol><li>open</li><li>shut</li></ol>');
    });

    it('has tables', () => {
        expect(html('| unit | is |', '|---|---|', '| `bar` | 100 kPa |'))
            .toBe('<table><thead><tr><th scope="col">unit</th><th scope="col">is</th></tr></thead><tbody><tr><td><code>bar</code></td><td>100 kPa</td></tr></tbody></table>');
    });

    it('has rigs as they are typed, also where the fence is not closed', () => {
        expect(html('```rig', 'stack { cells: 7 }  # <b>', '```')).toBe('<pre tabindex="0"><code>stack { cells: 7 }  # &lt;b&gt;</code></pre>');
        expect(html('```', 'a *b*')).toBe('<pre tabindex="0"><code>a *b*</code></pre>');
    });

    it('links only where it is told to', () => {
        expect(html('[here](https://example.org/a) and [there](file:///etc)')).toBe('<p><a href="https://example.org/a">here</a> and there</p>');
    });

    it.each(['<script>alert(1)</script>', '**<img src=x onerror=alert(1)>**', '`</code><b>`', '[a](https://x"onmouseover="y)', '| <i> |\n|---|\n| </td><b> |'])(
        'never lets a text become a tag: %s', text => {
            const tags = html(text).match(/<\/?([a-z0-9]+)[^>]*>/g) ?? [];
            for (const tag of tags) expect(tag).toMatch(/^<\/?(p|strong|code|a|table|thead|tbody|tr|th|td)( (scope|href)="[^"<>]*")?>$/);
        });

    it('reads any text', () => {
        for (const text of ['', '\n\n', '> quote\n> more', '---', '- ', '|', '* a\n\n* b', '#', '  - odd\n- start', '```']) expect(() => html(text)).not.toThrow();
    });
});
