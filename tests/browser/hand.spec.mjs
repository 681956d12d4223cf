//! In the hand: how long each place is as it opens, and that its answer is on the first screen.

import assert from 'node:assert/strict';
import { AppPage, drawn } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// The height of the open place.
const height = (page) => page.evaluate(() => document.documentElement.scrollHeight);

/// Opens a place as it comes, with all that is drawn a frame later.
async function asItOpens(session, place) {
  const { page } = await session.open('phone');
  await new AppPage(page).go(place, { asItOpens: true });
  for (let frame = 0; frame < 6; frame += 1) await drawn(page);
  return page;
}

/// Whether an element ends above the fold.
async function isOnFirstScreen(locator) {
  const { y, height } = await locator.boundingBox();
  return y >= 0 && y + height <= 640;
}

test('Heat is at most 1,900 px long as it opens, the dough and what helps on the first screen', async (session) => {
  const page = await asItOpens(session, 'Heat');
  const use = page.getByRole('button', { name: /^Use: / }).first();
  await use.waitFor();
  assert.ok((await height(page)) <= 1900, `${await height(page)} px`);
  assert.ok(await isOnFirstScreen(page.getByRole('heading', { name: 'The dough this morning' })));
});

test('Day is at most 1,900 px long as it opens, its times and the ribbon on the first screen', async (session) => {
  const page = await asItOpens(session, 'Day');
  await page.getByRole('button', { name: 'Start at the bench' }).waitFor();
  await page.locator('.ribbon svg').waitFor();
  assert.ok((await height(page)) <= 1900, `${await height(page)} px`);
  assert.ok(await isOnFirstScreen(page.getByText(/^On the table .*; start /)));
  assert.ok(await isOnFirstScreen(page.locator('.ribbon svg')));
  const { width } = await page.locator('.ribbon svg').boundingBox();
  assert.ok(width <= 360, 'the ribbon fits the width');
});
