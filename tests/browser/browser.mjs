//! Finds the browser and starts it.

import { existsSync } from 'node:fs';
import { chromium } from 'playwright-core';

const PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/google-chrome-stable',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/// The browser's path, or a sentence on how to get one.
export function path() {
  const named = process.env.SOFTCRUMB_BROWSER;
  const found = named ?? PLACES.find((place) => existsSync(place));
  if (!found) {
    throw new Error('There is no Chrome or Chromium here. On Debian, as root: apt-get install chromium. '
      + 'Else install one and name it in SOFTCRUMB_BROWSER.');
  }
  return found;
}

const QUIET = ['--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking',
  '--disable-component-update', '--disable-sync'];

/// Starts it, out of sight. The sandbox is left out only for root, who cannot have one.
export function start() {
  const args = process.getuid?.() === 0 ? [...QUIET, '--no-sandbox'] : QUIET;
  return chromium.launch({ executablePath: path(), args, env: { ...process.env, DBUS_SESSION_BUS_ADDRESS: 'disabled:' } });
}
