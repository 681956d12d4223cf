//! In the hand: each place is short as it opens, and its head leaves room for it.

import assert from 'node:assert/strict';
import { Formula } from './pages/formula.mjs';
import { drawn } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// The most that a place is long as it opens with the example, px of a phone of 360 × 640.
const MOST = 1900;

/// How long the page is.
const length = (page) => page.evaluate(() => document.documentElement.scrollHeight);

test('Formula is at most 1,900 px long as it opens, its head at most 104 px high', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  await page.locator('main .answer').first().waitFor();
  await drawn(page);
  const long = await length(page);
  assert.ok(long <= MOST, `${long} px`);
  const { height } = await page.getByRole('banner').boundingBox();
  assert.ok(height <= 104, `the head is ${height} px high`);
  await formula.saysNothingWrong();
});

test('the places stay in reach on a phone held sideways and with text of twice the size', async (session) => {
  for (const [how, viewport, large] of [['sideways', { width: 640, height: 360 }, false], ['large text', { width: 360, height: 640 }, true]]) {
    const visit = await session.open('phone', { viewport });
    if (large) await (await visit.context.newCDPSession(visit.page)).send('Page.setFontSizes', { fontSizes: { standard: 32, fixed: 26 } });
    await drawn(visit.page);
    await visit.page.evaluate(() => scrollTo(0, 700));
    await drawn(visit.page);
    for (const link of await visit.page.getByRole('navigation', { name: 'Places' }).getByRole('link').all()) {
      const box = await link.boundingBox();
      const words = `${how}: ${await link.innerText()} ${JSON.stringify(box)}`;
      assert.ok(box.x >= 0 && box.x + box.width <= viewport.width + 0.5, words);
      assert.ok(box.y >= 0 && box.y + box.height <= viewport.height + 0.5, words);
    }
  }
});
