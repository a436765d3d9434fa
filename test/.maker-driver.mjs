// ../../../tmp/maker-drv/driver.ts
import http from "node:http";
import path from "node:path";
import { fetchEditor } from "/work/helpers/maker/extension/workbench/fetch-editor.mjs";
import { serve } from "/work/helpers/maker/extension/workbench/serve.mjs";
import { readable } from "/work/helpers/maker/extension/workbench/settings.mjs";

// test/editor-e2e/workbench.ts
import { existsSync } from "node:fs";
import { chromium } from "playwright-core";
var browserPath = process.env.CHROMIUM ?? "/usr/bin/chromium";
var hasBrowser = existsSync(browserPath);
var browserFlags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync"
];
var answeredInside = ".vscode-resource.vscode-cdn.net";
var activeEditor = ".editor-group-container.active";
var Workbench = class _Workbench {
  constructor(browser, page2) {
    this.browser = browser;
    this.page = page2;
  }
  browser;
  page;
  /** Addresses other than the workbench's own that were asked for. */
  outside = /* @__PURE__ */ new Set();
  /** What the page wrote to its console. */
  console = [];
  /** Opens the address and waits until the workbench is drawn. */
  static async open(address, size = { width: 1100, height: 700 }) {
    const browser = await chromium.launch({ executablePath: browserPath, args: browserFlags });
    const context = await browser.newContext({ viewport: size });
    const page2 = await context.newPage();
    const workbench = new _Workbench(browser, page2);
    const own = new URL(address).origin;
    context.on("request", (request) => {
      const url = request.url();
      if (/^(https?|wss?):/.test(url) && !url.startsWith(own) && !url.includes(answeredInside)) workbench.outside.add(new URL(url).origin);
    });
    page2.on("console", (message) => workbench.console.push(`${message.type()}: ${message.text()}`));
    page2.on("pageerror", (error) => workbench.console.push(`page error: ${error}`));
    page2.setDefaultTimeout(1e4);
    await page2.goto(address, { timeout: 6e4 });
    await page2.locator(".monaco-workbench").waitFor({ timeout: 6e4 });
    await page2.locator(".statusbar-item").first().waitFor({ timeout: 6e4 });
    return workbench;
  }
  /** Elements by selector, and by the text in them. */
  find(selector, hasText) {
    return this.page.locator(selector, hasText === void 0 ? void 0 : { hasText });
  }
  /** Presses a key or a chord such as Control+Space. */
  key(name) {
    return this.page.keyboard.press(name);
  }
  /** Types text at the cursor. */
  type(text) {
    return this.page.keyboard.type(text);
  }
  /** Opens a file of the explorer and waits for its text. */
  async openFile(name) {
    const row = this.find(".explorer-folders-view .monaco-list-row", name).first();
    if (!await row.isVisible()) await this.key("Control+Shift+E");
    await row.waitFor({ timeout: 6e4 });
    await row.dblclick();
    await this.find(".tab.active", name).first().waitFor();
    await this.find(`${activeEditor} .view-lines .view-line`).first().waitFor();
  }
  /**
   * Runs a command by its full name. The first row of the list is not always the command typed, the list may still
   * be sorting, and the focus may be taken away: hence the exact row, and another try.
   */
  async run(command, choice) {
    const input = this.find(".quick-input-widget:visible input").first();
    const exact = new RegExp(`^${command.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}$`);
    const row = this.find(".quick-input-list .monaco-list-row").filter({ has: this.page.locator(".label-name", { hasText: exact }) }).first();
    for (let attempt = 1; ; attempt++) {
      try {
        await this.key("F1");
        await input.fill(`>${command}`, { timeout: 3e3 });
        await row.click({ timeout: 3e3 });
        await this.page.waitForFunction((text) => {
          const widgets = [...document.querySelectorAll(".quick-input-widget")];
          return widgets.find((widget) => widget.offsetParent)?.querySelector("input")?.value !== text;
        }, `>${command}`, { timeout: 2e3 });
        break;
      } catch (error) {
        if (attempt === 5) throw error;
        await this.key("Escape");
      }
    }
    if (choice !== void 0) await this.choose(choice);
  }
  /** Picks a row of the list that is open. The list draws only what is in view, so it is filtered first. */
  async choose(text) {
    await this.find(".quick-input-widget:visible input").first().fill(text);
    await this.find(".quick-input-widget:visible .monaco-list-row", text).first().click();
  }
  /** Back to a calm editor: no list, no hover, the cursor at the start of the text. */
  async calm() {
    for (let i = 0; i < 3; i++) await this.key("Escape");
    const box = await this.find(`${activeEditor} .monaco-editor`).first().boundingBox({ timeout: 1e3 }).catch(() => null);
    if (box) {
      await this.page.mouse.click(box.x + box.width * 0.6, box.y + box.height - 30);
      await this.key("Control+Home");
    }
  }
  /** A line of the text on screen that holds these words. */
  line(text) {
    return this.find(`${activeEditor} .view-line`, text).first();
  }
  /** Puts the cursor at a line and column, both counted from 1. */
  async caret(line, column) {
    await this.key("Control+G");
    const input = this.find(".quick-input-widget:visible input").first();
    await input.waitFor();
    await input.fill(`:${line}:${column}`);
    await this.find(".quick-input-list .monaco-list-row").first().waitFor();
    await this.key("Enter");
    await this.find(".quick-input-widget").waitFor({ state: "hidden" });
    await this.find(`${activeEditor} .monaco-editor.focused`).first().waitFor();
  }
  /** Where some text stands on the screen, and in what colour. */
  async place(text) {
    const found = await this.page.waitForFunction(([wanted, editor]) => {
      for (const line of document.querySelectorAll(`${editor} .view-line`)) {
        const walker = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
        for (let node = walker.nextNode(); node; node = walker.nextNode()) {
          const at = node.data.replaceAll("\xA0", " ").indexOf(wanted);
          if (at < 0) continue;
          const range = document.createRange();
          range.setStart(node, at);
          range.setEnd(node, at + wanted.length);
          const box = range.getBoundingClientRect();
          return { x: box.x + box.width / 2, y: box.y + box.height / 2, colour: getComputedStyle(node.parentElement).color };
        }
      }
      return void 0;
    }, [text, activeEditor]);
    return await found.jsonValue();
  }
  /** Rests the pointer on some text and gives the words of the hover. */
  async hover(text) {
    const { x, y } = await this.place(text);
    await this.page.mouse.move(x - 3, y);
    await this.page.mouse.move(x, y);
    await this.find(".monaco-hover:not(.hidden) .hover-contents").first().waitFor();
    return this.find(".monaco-hover:not(.hidden)").first().innerText();
  }
  /** Takes the pointer out of the text. */
  async leave() {
    await this.page.mouse.move(5, 690);
    await this.find(".monaco-hover:not(.hidden) .hover-contents").first().waitFor({ state: "hidden" });
  }
  /** The lines of the active editor that are in view, hints included. */
  async text() {
    const lines = await this.find(`${activeEditor} .view-line`).evaluateAll((all) => all.map((line) => ({ top: line.getBoundingClientRect().top, text: line.textContent ?? "" })).sort((a, b) => a.top - b.top).map((line) => line.text));
    return lines.join("\n").replaceAll("\xA0", " ");
  }
  get hint() {
    return this.find(`${activeEditor} .view-line span > span`, "\u2248");
  }
  /** How many hints are in view. */
  hintCount() {
    return this.hint.count();
  }
  /** Waits for numbers at line ends, and gives their words. */
  async hints() {
    const hints = this.hint;
    await hints.first().waitFor({ timeout: 3e4 });
    return (await hints.allInnerTexts()).map((text) => text.replaceAll("\xA0", " ").trim()).filter((text) => text);
  }
  /** The words of the next notification that holds this text; then none is left on screen. */
  async notification(text) {
    const note = this.find(".notification-list-item-message", text).first();
    await note.waitFor();
    const words = await note.innerText();
    await this.run("Notifications: Clear All Notifications");
    return words;
  }
  /** The frame of a page of the extension that holds these words. */
  async explained(words) {
    for (let i = 0; i < 150; i++) {
      for (const frame of this.page.frames()) {
        if (!frame.parentFrame()?.parentFrame()) continue;
        const text = await frame.locator("main").innerText({ timeout: 200 }).catch(() => "");
        if (typeof words === "string" ? text.includes(words) : words.test(text)) return frame;
      }
      await this.page.waitForTimeout(100);
    }
    throw new Error(`no page says ${words}`);
  }
  /** Takes back every change of the file on screen. */
  async revert() {
    await this.run("File: Revert File");
  }
  /** Chooses a colour theme and waits until the workbench wears it. */
  async theme(label, marker) {
    await this.run("Preferences: Color Theme", label);
    await this.find(`.monaco-workbench.${marker}`).waitFor();
    await this.page.waitForTimeout(400);
  }
  /**
   * How well each stretch of the text stands out against the editor's background, as the contrast ratio of WCAG. The
   * editor's text is no semantic markup, so a checker of pages does not look at it.
   */
  contrasts() {
    return this.page.evaluate((editor) => {
      const channels = (colour) => (colour.match(/[\d.]+/g) ?? []).slice(0, 3).map(Number);
      const luminance = (rgb) => {
        const [r, g, b] = rgb.map((v) => v / 255 <= 0.03928 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4);
        return 0.2126 * r + 0.7152 * g + 0.0722 * b;
      };
      const background = getComputedStyle(document.querySelector(`${editor} .monaco-editor-background`)).backgroundColor;
      const result = {};
      for (const span of document.querySelectorAll(`${editor} .view-line span > span`)) {
        const text = (span.textContent ?? "").replaceAll("\xA0", " ").trim();
        if (!text) continue;
        const [light, dark] = [luminance(channels(getComputedStyle(span).color)), luminance(channels(background))].sort((a, b) => b - a);
        result[text] = Math.round((light + 0.05) / (dark + 0.05) * 10) / 10;
      }
      return result;
    }, activeEditor);
  }
  /** Takes a picture of the window. */
  async picture(file) {
    await this.page.screenshot({ path: file, scale: "css" });
  }
  /** Closes the browser. */
  async close() {
    await this.browser.close();
  }
};

// ../../../tmp/maker-drv/driver.ts
var root = "/work/helpers/maker";
var server = await serve({
  folder: "/tmp/maker-rigs",
  extensionFolder: path.join(root, "extension"),
  editor: await fetchEditor(),
  open: process.argv[2],
  line: 1,
  settings: { ...readable, "files.autoSave": "afterDelay", "window.autoDetectColorScheme": false, "window.autoDetectHighContrast": false, "workbench.quickOpen.closeOnFocusLost": false }
});
var w = await Workbench.open(server.address(), { width: 1280, height: 800 });
var page = w.page;
var sleep = (n) => page.waitForTimeout(n);
var shot = (n) => w.picture(`/tmp/maker-shots/${n}.png`);
var list = async () => (await page.locator(".suggest-widget.visible .monaco-list-row").evaluateAll((r) => r.map((x) => x.getAttribute("aria-label") + (x.classList.contains("focused") ? "   <<<" : "")))).join("\n");
var details = async () => (await page.locator(".suggest-details-container").allInnerTexts()).join("\n");
var marks = async () => {
  return (await page.evaluate(() => [...document.querySelectorAll(".squiggly-error,.squiggly-warning,.squiggly-info,.squiggly-hint")].map((e) => e.className))).join("\n");
};
var AF = Object.getPrototypeOf(async function() {
}).constructor;
http.createServer((req, res) => {
  let b = "";
  req.on("data", (d) => b += d);
  req.on("end", async () => {
    try {
      const r = await new AF("w", "page", "sleep", "shot", "list", "details", "marks", b)(w, page, sleep, shot, list, details, marks);
      res.end((typeof r === "string" ? r : JSON.stringify(r, null, 1) ?? "ok") + "\n");
    } catch (e) {
      res.end("ERR " + e.stack + "\n");
    }
  });
}).listen(7788, "127.0.0.1");
console.log("ready");
