//! In the hand: each place is at most three screens long as it opens, with its answer on the first.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { AppPage } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// The phone that pages are measured on, and the most that a place may be, px.
const PHONE = { viewport: { width: 360, height: 640 } };
const MOST = 1900;

const height = (page) => page.evaluate(() => document.documentElement.scrollHeight);

for (const place of ['Batch', 'Chocolate']) {
  test(`each place is at most 1,900 px long as it opens: ${place}`, async (session) => {
    const { page } = await session.open('phone', PHONE);
    await new AppPage(page).go(place, { asItOpens: true });
    const seen = await height(page);
    assert.ok(seen <= MOST, `${seen} px`);
  });
}

test('the first weight of a link is on the first screen, with nothing tapped', async (session) => {
  const link = readFileSync(new URL('../sheet/samples/v1.links.txt', import.meta.url), 'utf8').split('\n')[0];
  const { page } = await session.open('phone', { ...PHONE, at: `#loaf=${link}` });
  const weight = page.getByRole('region', { name: 'What to weigh' }).getByRole('cell').first();
  await weight.waitFor();
  const box = await weight.boundingBox();
  const covered = await page.evaluate(([x, y]) => document.elementFromPoint(x, y)?.tagName, [box.x + box.width / 2, box.y + box.height / 2]);
  assert.equal(covered, 'TD', 'nothing lies over it');
});
