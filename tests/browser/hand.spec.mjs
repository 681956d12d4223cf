//! In the hand: each place is short as it opens, and its head leaves room for it.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
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

for (const place of ['Batch', 'Heat', 'Chocolate', 'Day']) {
  test(`${place} is at most 1,900 px long as it opens`, async (session) => {
    const { page } = await session.open('phone');
    await new Formula(page).go(place, { asItOpens: true });
    await page.locator('main .answer').nth(4).waitFor();
    await drawn(page);
    const long = await length(page);
    console.log(`          ${place}: ${long} px`);
    assert.ok(long <= MOST, `${long} px`);
  });
}

test('the name in the head takes the width it has, and is told in full', async (session) => {
  const { page } = await session.open('phone');
  const app = new Formula(page);
  const name = app.nameButton.locator('span');
  const isCut = () => name.evaluate((span) => span.scrollWidth > span.clientWidth);
  assert.equal(await app.name(), 'Lantern Lane chocolate loaf');
  assert.equal(await isCut(), false, 'the example’s name is whole');
  await app.nameButton.click();
  await app.opened();
  const long = 'Seeded evening class loaf with a very long name that no phone can show';
  await app.dialog.getByRole('textbox', { name: 'Name' }).fill(long);
  await app.close();
  assert.equal(await app.nameButton.getAttribute('title'), long);
  assert.equal(await isCut(), true);
  const lines = await name.evaluate((span) => span.getBoundingClientRect().height / Number.parseFloat(getComputedStyle(span).lineHeight));
  assert.ok(lines < 1.5, `${lines} lines`);
  // No hole is left between the name and what stands beside it.
  const [own, next] = [await app.nameButton.boundingBox(), await app.tool('Undo').boundingBox()];
  assert.ok(next.x - (own.x + own.width) <= 8, `${JSON.stringify(own)} ${JSON.stringify(next)}`);
  for (const tool of ['Undo', 'Share', 'Settings']) {
    const { width, height } = await app.tool(tool).boundingBox();
    assert.ok(width >= 48 && height >= 48, `${tool}: ${width} × ${height}`);
  }
  await app.nameButton.click();
  await app.opened();
  assert.equal(await app.dialog.getByRole('textbox', { name: 'Name' }).inputValue(), long);
});

const [LINK] = readFileSync(new URL('../sheet/samples/v1.links.txt', import.meta.url), 'utf8').split('\n');

test('the notice of a visit is one line with its button, and everything can be scrolled free of it', async (session) => {
  for (const [locale, screen] of [['en-GB', 'phone'], ['es-ES', 'phone'], ['ja-JP', 'phone'], ['en-GB', 'wide']]) {
    const { page } = await session.open(screen, { at: `#loaf=${LINK}`, locale });
    const notice = page.locator('.foot .notice');
    await notice.waitFor();
    await page.locator('.visit .card').first().waitFor();
    await drawn(page);
    const { height } = await notice.boundingBox();
    assert.ok(height <= 62, `${locale}, ${screen}: ${height} px`);
    await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
    await drawn(page);
    const { y } = await notice.boundingBox();
    const foot = await page.locator('main').evaluate((main) => Math.max(...[...main.querySelectorAll('.card')].map((card) => card.getBoundingClientRect().bottom)));
    assert.ok(foot <= y + 0.5, `${locale}, ${screen}: the content ends at ${foot}, the notice begins at ${y}`);
  }
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

/// How far down the columns of a place reach, by where they begin.
const columns = (page) => page.evaluate(() => {
  const ends = new Map();
  for (const card of document.querySelectorAll('main .card')) {
    const { left, bottom, height } = card.getBoundingClientRect();
    if (height > 0) ends.set(Math.round(left), Math.max(ends.get(Math.round(left)) ?? 0, bottom));
  }
  const top = document.querySelector('main').getBoundingClientRect().top;
  return [...ends.values()].map((bottom) => bottom - top);
});

test('on a wide screen the two columns of each place are about equally long', async (session) => {
  const { page } = await session.open('wide');
  const app = new Formula(page);
  for (const place of ['Formula', 'Batch', 'Heat', 'Chocolate', 'Day']) {
    await app.go(place, { asItOpens: true });
    await page.locator('main .answer').first().waitFor();
    await page.waitForLoadState('networkidle');
    await drawn(page);
    const ends = await columns(page);
    assert.equal(ends.length, 2, `${place}: ${ends}`);
    assert.ok(Math.min(...ends) >= 0.8 * Math.max(...ends), `${place}: ${ends}`);
  }
});
