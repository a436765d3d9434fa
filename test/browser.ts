/** The browser that some tests drive. Where RIGWRIGHT_BROWSER=required one that is missing fails them; elsewhere the workbench's test tells of it. */
import { existsSync } from 'node:fs';
import { it } from 'vitest';

/** Where Debian and its kin put the browser; `CHROMIUM` names another. */
export const browserPath = process.env.CHROMIUM ?? '/usr/bin/chromium';
/** Whether there is a browser to drive. */
export const hasBrowser = existsSync(browserPath);
/** 'required', 'none' or nothing. */
export const browserWish = process.env.RIGWRIGHT_BROWSER ?? '';
/** A test that cannot do without a browser. */
export const itInBrowser = it.runIf(browserWish === 'required' || (hasBrowser && browserWish !== 'none'));

export const browserFlags = [
    '--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync',
];
