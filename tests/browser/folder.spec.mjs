//! The page works below any folder of a host, beside other pages there.

import assert from 'node:assert/strict';
import { serve } from './host.mjs';
import { cached, ready } from './launch.mjs';
import { test } from './registry.mjs';

test('below a sub-folder the page opens, is kept, and opens again without a signal', async (session) => {
  const host = await serve(undefined, '/bread/soft/');
  try {
    const { context, page, address, requests } = await session.open('phone', { address: host.address });
    await cached(page);
    assert.ok(address.endsWith('/bread/soft/'));
    assert.deepEqual(requests.filter((url) => !url.startsWith(address)), []);
    await context.setOffline(true);
    await page.goto(`${address}?again#/there`);
    await ready(page);
    const scope = await page.evaluate(() => navigator.serviceWorker.getRegistration().then((found) => found.scope));
    assert.equal(scope, address);
  } finally {
    host.stop();
  }
});
