//! One visit to a page on a slowed device: a clean profile, no service worker, no store.

import { SCREENS } from '../launch.mjs';
import { probe } from './probe.mjs';

/// The devtools' slow 4G: 150 ms × 3.75 there and back, 1.6 Mbit/s × 0.9 down, 750 kbit/s × 0.9 up.
export const SLOW_4G = { offline: false, latency: 562.5, downloadThroughput: (1.6e6 / 8) * 0.9, uploadThroughput: (750e3 / 8) * 0.9 };

/// Opens `address`; `kind` as in probe.mjs, `null` for a visitor who only looks; `answers` runs in the page and says
/// when it is opened.
export async function visit(browser, address, kind, { processor = 1, network, prepare, answers } = {}) {
  const context = await browser.newContext({ ...SCREENS.phone, serviceWorkers: 'block' });
  const page = await context.newPage();
  if (prepare) await prepare(page, address);
  const session = await context.newCDPSession(page);
  await session.send('Network.enable');
  await session.send('Network.setCacheDisabled', { cacheDisabled: true });
  if (network) await session.send('Network.emulateNetworkConditions', network);
  if (processor > 1) await session.send('Emulation.setCPUThrottlingRate', { rate: processor });
  if (kind) await page.addInitScript(probe, kind);
  await page.goto(address, { waitUntil: 'commit' });
  const usual = kind ? () => window.noted?.ready : () => document.readyState === 'complete' && !document.getElementById('waiting');
  await page.waitForFunction(answers ?? usual, null, { timeout: 60_000, polling: answers ? 'raf' : 100 });
  return { context, page };
}
