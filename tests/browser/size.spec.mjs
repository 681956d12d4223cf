//! A first visit is light enough for a weak signal.

import assert from 'node:assert/strict';
import { ready } from './launch.mjs';
import { test } from './registry.mjs';

// The aim is 160 KB; why it is not met yet stands in DEVELOPERS.md. Until then it may not grow.
const BUDGET = 180_000;

test('all a first visit loads before the page works stays below its ceiling', async (session) => {
  const context = await session.browser.newContext({ serviceWorkers: 'block' });
  const page = await context.newPage();
  const wire = await context.newCDPSession(page);
  await wire.send('Network.enable');
  const pieces = new Set();
  let [first, later] = [0, 0];
  wire.on('Network.requestWillBeSent', ({ requestId, request }) => {
    if (/\/(split|chunk)_/.test(request.url)) pieces.add(requestId);
  });
  wire.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
    if (pieces.has(requestId)) later += encodedDataLength;
    else first += encodedDataLength;
  });
  await page.goto(session.address);
  await ready(page);
  await page.waitForLoadState('networkidle');
  await context.close();
  console.log(`          ${first} bytes with headers, and ${later} of pieces once the page works`);
  assert.ok(first > 10_000, 'the count itself works');
  assert.ok(first <= BUDGET, `${first} bytes`);
});
