#!/usr/bin/env node
// node extension/scripts/picture.mjs: takes extension/media/workbench.png, the picture of the README, from the real
// workbench on the main example, with the Chromium of this computer. Run it when the look has changed.
import path from 'node:path';
import { chromium } from 'playwright-core';
import { examplesDate, examplesFolder, lineToShow, mainExample } from '../workbench/examples.mjs';
import { fetchEditor } from '../workbench/fetch-editor.mjs';
import { serve } from '../workbench/serve.mjs';
import { readable } from '../workbench/settings.mjs';
import { extensionFolder } from './project.mjs';

const server = await serve({
    folder: examplesFolder,
    extensionFolder,
    editor: await fetchEditor(),
    open: mainExample,
    line: lineToShow(),
    settings: {
        ...readable,
        'files.autoSave': 'off',
        'rigwright.today': examplesDate,
        'workbench.statusBar.visible': false,
        'workbench.activityBar.location': 'hidden',
    },
});
const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
try {
    const page = await browser.newPage({ viewport: { width: 1180, height: 720 } });
    await page.goto(server.address());
    await page.locator('.view-line span > span', { hasText: '≈' }).first().waitFor({ timeout: 60_000 });
    // The working of the volts of a cell, from the line that says how many there are.
    const line = page.locator('.view-line', { hasText: /^\s*cells:/ });
    const word = await line.locator('span > span', { hasText: 'cells' }).first().boundingBox();
    await page.mouse.move(word.x + word.width - 12, word.y + word.height / 2);
    await page.mouse.move(word.x + word.width - 16, word.y + word.height / 2);
    await page.locator('.monaco-hover:not(.hidden) .hover-contents', { hasText: 'volts-per-cell' }).first().waitFor();
    await page.waitForTimeout(800);
    await page.screenshot({ path: path.join(extensionFolder, 'media', 'workbench.png'), scale: 'css' });
} finally {
    await browser.close();
    server.stop();
}
