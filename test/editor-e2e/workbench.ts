// Verbs for a VS Code workbench in a headless browser. The selectors belong to the version that the launcher pins.
import { chromium, type Frame } from 'playwright-core';
import type { Browser, Locator, Page } from 'playwright-core';
import { browserFlags, browserPath } from '../browser.js';

/** The webview's own service worker answers these out of the editor's files; they never leave the machine. */
const answeredInside = '.vscode-resource.vscode-cdn.net';
const activeEditor = '.editor-group-container.active';

/** One workbench in one browser window. */
export class Workbench {
    /** Addresses other than the workbench's own that were asked for. */
    readonly outside = new Set<string>();
    /** What the page wrote to its console. */
    readonly console: string[] = [];

    private constructor(readonly browser: Browser, readonly page: Page) {}

    /** Opens the address and waits until the workbench is drawn. */
    static async open(address: string, size = { width: 1100, height: 700 }): Promise<Workbench> {
        const browser = await chromium.launch({ executablePath: browserPath, args: browserFlags });
        const context = await browser.newContext({ viewport: size });
        const page = await context.newPage();
        const workbench = new Workbench(browser, page);
        const own = new URL(address).origin;
        context.on('request', request => {
            const url = request.url();
            if (/^(https?|wss?):/.test(url) && !url.startsWith(own) && !url.includes(answeredInside)) workbench.outside.add(new URL(url).origin);
        });
        page.on('console', message => workbench.console.push(`${message.type()}: ${message.text()}`));
        page.on('pageerror', error => workbench.console.push(`page error: ${error}`));
        page.setDefaultTimeout(10_000);
        await page.goto(address, { timeout: 60_000 });
        await page.locator('.monaco-workbench').waitFor({ timeout: 60_000 });
        await page.locator('.statusbar-item').first().waitFor({ timeout: 60_000 });
        return workbench;
    }

    /** Elements by selector, and by the text in them. */
    find(selector: string, hasText?: string | RegExp): Locator {
        return this.page.locator(selector, hasText === undefined ? undefined : { hasText });
    }

    /** Presses a key or a chord such as Control+Space. */
    key(name: string): Promise<void> {
        return this.page.keyboard.press(name);
    }

    /** Types text at the cursor. */
    type(text: string): Promise<void> {
        return this.page.keyboard.type(text);
    }

    /** Opens a file of the explorer and waits for its text. */
    async openFile(name: string): Promise<void> {
        const row = this.find('.explorer-folders-view .monaco-list-row', name).first();
        if (!await row.isVisible()) await this.key('Control+Shift+E');
        await row.waitFor({ timeout: 60_000 });
        await row.dblclick();
        await this.find('.tab.active', name).first().waitFor();
        await this.find(`${activeEditor} .view-lines .view-line`).first().waitFor();
    }

    /**
     * Runs a command by its full name. The first row of the list is not always the command typed, the list may still
     * be sorting, and the focus may be taken away: hence the exact row, and another try.
     */
    async run(command: string, choice?: string): Promise<void> {
        const input = this.find('.quick-input-widget:visible input').first();
        const exact = new RegExp(`^${command.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}$`);
        const row = this.find('.quick-input-list .monaco-list-row').filter({ has: this.page.locator('.label-name', { hasText: exact }) }).first();
        for (let attempt = 1; ; attempt++) {
            try {
                await this.key('F1');
                await input.fill(`>${command}`, { timeout: 3000 });
                await row.click({ timeout: 3000 });
                await this.page.waitForFunction(text => {
                    const widgets = [...document.querySelectorAll<HTMLElement>('.quick-input-widget')];
                    return widgets.find(widget => widget.offsetParent)?.querySelector('input')?.value !== text;
                }, `>${command}`, { timeout: 2000 });
                break;
            } catch (error) {
                if (attempt === 5) throw error;
                await this.key('Escape');
            }
        }
        if (choice !== undefined) await this.choose(choice);
    }

    /** Picks a row of the list that is open. The list draws only what is in view, so it is filtered first. */
    async choose(text: string): Promise<void> {
        await this.find('.quick-input-widget:visible input').first().fill(text);
        await this.find('.quick-input-widget:visible .monaco-list-row', text).first().click();
    }

    /** Back to a calm editor: no list, no hover, the cursor at the start of the text. */
    async calm(): Promise<void> {
        for (let i = 0; i < 3; i++) await this.key('Escape');
        const box = await this.find(`${activeEditor} .monaco-editor`).first().boundingBox({ timeout: 1000 }).catch(() => null);
        // The mouse at a point, not a click on an element: that may scroll the text away.
        if (box) {
            await this.page.mouse.click(box.x + box.width * 0.6, box.y + box.height - 30);
            await this.key('Control+Home');
        }
    }

    /** A line of the text on screen that holds these words. */
    line(text: string | RegExp): Locator {
        return this.find(`${activeEditor} .view-line`, text).first();
    }

    /** Puts the cursor at a line and column, both counted from 1. */
    async caret(line: number, column: number): Promise<void> {
        await this.key('Control+G');
        const input = this.find('.quick-input-widget:visible input').first();
        await input.waitFor();
        await input.fill(`:${line}:${column}`);
        await this.find('.quick-input-list .monaco-list-row').first().waitFor();
        await this.key('Enter');
        await this.find('.quick-input-widget').waitFor({ state: 'hidden' });
        await this.find(`${activeEditor} .monaco-editor.focused`).first().waitFor();
    }

    /** Where some text stands on the screen, and in what colour. */
    async place(text: string): Promise<{ x: number; y: number; colour: string }> {
        const found = await this.page.waitForFunction(([wanted, editor]) => {
            for (const line of document.querySelectorAll(`${editor} .view-line`)) {
                const walker = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
                for (let node = walker.nextNode() as Text | null; node; node = walker.nextNode() as Text | null) {
                    const at = node.data.replaceAll('\u00a0', ' ').indexOf(wanted);
                    if (at < 0) continue;
                    const range = document.createRange();
                    range.setStart(node, at);
                    range.setEnd(node, at + wanted.length);
                    const box = range.getBoundingClientRect();
                    return { x: box.x + box.width / 2, y: box.y + box.height / 2, colour: getComputedStyle(node.parentElement!).color };
                }
            }
            return undefined;
        }, [text, activeEditor] as const);
        return (await found.jsonValue())!;
    }

    /** Rests the pointer on some text and gives the words of the hover. */
    async hover(text: string): Promise<string> {
        for (let tries = 0; ; tries++) {
            const { x, y } = await this.place(text);
            await this.page.mouse.move(x - 3, y);
            await this.page.mouse.move(x, y);
            await this.find('.monaco-hover:not(.hidden) .hover-contents').first().waitFor();
            const words = await this.find('.monaco-hover:not(.hidden)').first().innerText();
            // A line of lenses that comes above it moves the text: then the pointer stood on another word.
            const now = await this.place(text);
            if ((now.x === x && now.y === y) || tries === 4) return words;
            await this.leave();
        }
    }

    /** Takes the pointer out of the text. */
    async leave(): Promise<void> {
        await this.page.mouse.move(5, 690);
        await this.find('.monaco-hover:not(.hidden) .hover-contents').first().waitFor({ state: 'hidden' });
    }

    /** The lines of the active editor that are in view, hints included. */
    async text(): Promise<string> {
        const lines = await this.find(`${activeEditor} .view-line`).evaluateAll(all => all
            .map(line => ({ top: line.getBoundingClientRect().top, text: line.textContent ?? '' }))
            .sort((a, b) => a.top - b.top).map(line => line.text));
        return lines.join('\n').replaceAll('\u00a0', ' ');
    }

    private get hint(): Locator {
        return this.find(`${activeEditor} .view-line span > span`, '≈');
    }

    /** How many hints are in view. */
    hintCount(): Promise<number> {
        return this.hint.count();
    }

    /** Waits for numbers at line ends, and gives their words. */
    async hints(): Promise<string[]> {
        const hints = this.hint;
        await hints.first().waitFor({ timeout: 30_000 });
        return (await hints.allInnerTexts()).map(text => text.replaceAll('\u00a0', ' ').trim()).filter(text => text);
    }

    /** The words of the next notification that holds this text; then none is left on screen. */
    async notification(text: string | RegExp): Promise<string> {
        const note = this.find('.notification-list-item-message', text).first();
        await note.waitFor();
        const words = await note.innerText();
        await this.run('Notifications: Clear All Notifications');
        return words;
    }

    /**
     * A page of the extension that holds these words, as HTML. The editor writes such a page into an empty frame; the frame's
     * own `content()` may go on giving the empty document, so the HTML is asked of an element that is there.
     */
    async explained(words: string): Promise<string> {
        let seen: string[] = [];
        for (let i = 0; i < 400; i++) {
            seen = [];
            for (const frame of this.page.frames()) {
                // The page stands in a frame of a frame of the window.
                if (!frame.parentFrame()?.parentFrame()) continue;
                const main = frame.locator('main');
                const text = await main.innerText({ timeout: 200 }).catch(() => '');
                if (text.includes(words)) {
                    const html = await main.evaluate(element => element.ownerDocument.documentElement.outerHTML, undefined, { timeout: 1000 }).catch(String);
                    if (html.includes('<main')) return html;
                    seen.push(html);
                }
                seen.push(`${frame.name() || 'a frame'} with ${text.length} characters of text`);
            }
            await this.page.waitForTimeout(100);
        }
        throw new Error(`no page says ${words}; there is ${seen.join(', ') || 'no frame of a page at all'}`);
    }

    /** The frame of a page that holds these words, to be worked with. */
    async frameWith(words: string): Promise<Frame> {
        for (let i = 0; i < 400; i++) {
            for (const frame of this.page.frames()) {
                if (!frame.parentFrame()?.parentFrame()) continue;
                if ((await frame.locator('main').innerText({ timeout: 200 }).catch(() => '')).includes(words)) return frame;
            }
            await this.page.waitForTimeout(100);
        }
        throw new Error(`no page says ${words}`);
    }

    /** Takes back every change of the file on screen. */
    async revert(): Promise<void> {
        await this.run('File: Revert File');
    }

    /** Chooses a colour theme and waits until the workbench wears it. */
    async theme(label: string, marker: string): Promise<void> {
        await this.run('Preferences: Color Theme', label);
        await this.find(`.monaco-workbench.${marker}`).waitFor();
        await this.page.waitForTimeout(400);
    }

    /**
     * How well each stretch of the text stands out against the editor's background, as the contrast ratio of WCAG. The
     * editor's text is no semantic markup, so a checker of pages does not look at it.
     */
    contrasts(): Promise<Record<string, number>> {
        return this.page.evaluate(editor => {
            const channels = (colour: string) => (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
            const luminance = (rgb: number[]) => {
                const [r, g, b] = rgb.map(v => (v / 255 <= 0.03928 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4));
                return 0.2126 * r + 0.7152 * g + 0.0722 * b;
            };
            const background = getComputedStyle(document.querySelector(`${editor} .monaco-editor-background`)!).backgroundColor;
            const result: Record<string, number> = {};
            for (const span of document.querySelectorAll(`${editor} .view-line span > span`)) {
                const text = (span.textContent ?? '').replaceAll('\u00a0', ' ').trim();
                if (!text) continue;
                const [light, dark] = [luminance(channels(getComputedStyle(span).color)), luminance(channels(background))].sort((a, b) => b - a);
                result[text] = Math.round(((light + 0.05) / (dark + 0.05)) * 10) / 10;
            }
            return result;
        }, activeEditor);
    }

    /** Takes a picture of the window. */
    async picture(file: string): Promise<void> {
        await this.page.screenshot({ path: file, scale: 'css' });
    }

    /** Closes the browser. */
    async close(): Promise<void> {
        await this.browser.close();
    }
}
