#!/usr/bin/env node
// node extension/scripts/icon.mjs: draws media/icon.png from media/icon.svg, with the Chromium of this computer.
// Run it after changing the drawing; the picture is kept with the sources, since not every builder has a browser.
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { chromium } from 'playwright-core';
import { extensionFolder } from './project.mjs';

const size = 256;
const svg = readFileSync(path.join(extensionFolder, 'media', 'icon.svg'), 'utf8');
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ['--no-sandbox'] });
const page = await browser.newPage({ viewport: { width: size, height: size } });
await page.setContent(`<style>body { margin: 0 } svg { display: block }</style>${svg}`);
writeFileSync(path.join(extensionFolder, 'media', 'icon.png'), await page.screenshot({ omitBackground: true }));
await browser.close();
