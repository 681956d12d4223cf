//! The first screen stands in the page before the program has come, for those whom it shows what the page will.

import assert from 'node:assert/strict';
import { SCREENS, ready } from './launch.mjs';
import { KEYS } from './pages/storage.mjs';
import { test } from './registry.mjs';

/// Opens the page with the program held back; `release` lets it come.
async function held(context, address) {
  let release;
  const come = new Promise((resolve) => { release = resolve; });
  await context.route('**/softcrumb.*.wasm', async (route) => {
    await come;
    await route.continue();
  });
  const page = await context.newPage();
  await page.goto(address, { waitUntil: 'commit' });
  await page.locator('#waiting').waitFor({ state: 'attached' });
  await page.waitForFunction(() => document.styleSheets.length > 0);
  return { page, release };
}

/// Where the words of the first screen stand, and what its boxes hold.
const seen = (page) => page.evaluate(() => ({
  words: [...document.querySelectorAll('.head .name, .keys .figure, .card .line, .card h2, .place')]
    .map((element) => [element, element.getBoundingClientRect()])
    .filter(([, { top, height }]) => height > 0 && top < innerHeight)
    .map(([element, { left, top, width, height }]) => [element.textContent.trim(), ...[left, top, width, height].map(Math.round)]),
  figures: [...document.querySelectorAll('.line input')].map((box) => box.value),
}));

for (const screen of ['phone', 'wide']) {
  test(`${screen}: the example can be read before the program has come, and nothing moves when it comes`, async ({ browser, address }) => {
    const context = await browser.newContext({ ...SCREENS[screen], serviceWorkers: 'block' });
    await context.addInitScript(() => {
      window.shifts = 0;
      new PerformanceObserver((list) => {
        for (const { value } of list.getEntries()) window.shifts += value;
      }).observe({ type: 'layout-shift', buffered: true });
    });
    const { page, release } = await held(context, address);
    const before = await seen(page);
    assert.ok(before.words.length > 10 && before.figures.length > 8, `${before.words.length} words`);
    assert.ok(before.figures.every((figure) => /\d/.test(figure)), 'each box holds its figure');
    release();
    await ready(page);
    const after = await seen(page);
    // What loads later may stand beside it; what was there has not moved.
    const now = new Set(after.words.map(String));
    assert.deepEqual(before.words.filter((word) => !now.has(String(word))), []);
    assert.deepEqual(after.figures, before.figures);
    assert.equal(await page.locator('#first').count(), 0);
    // Google, Web Vitals: a good page shifts by less than 0.1.
    assert.ok(await page.evaluate(() => window.shifts) < 0.1);
    await context.close();
  });
}

const OTHERS = [
  ['a formula of their own', {}, '', true],
  ['a link to a place', {}, '#batch', false],
  ['another language', { locale: 'es-ES' }, '', false],
];
for (const [who, options, at, comesBack] of OTHERS) {
  test(`who has ${who} never sees the example in place of it`, async ({ browser, address }) => {
    const context = await browser.newContext({ ...SCREENS.phone, ...options, serviceWorkers: 'block' });
    if (comesBack) {
      const first = await context.newPage();
      await first.goto(address);
      await ready(first);
      await first.keyboard.press('Shift');
      await first.waitForFunction((key) => localStorage.getItem(key) !== null, KEYS.shelf);
      await first.close();
    }
    const { page, release } = await held(context, address + at);
    assert.equal(await page.locator('#first').isVisible(), false);
    assert.ok(await page.locator('#waiting').isVisible());
    release();
    await ready(page);
    await context.close();
  });
}

test('a burst of keys is stored once, after the frame that shows it', async (session) => {
  const { page } = await session.open('phone', {
    before: () => {
      window.writes = [];
      const set = Storage.prototype.setItem;
      Storage.prototype.setItem = function (key, text) {
        window.writes.push(key);
        return set.call(this, key, text);
      };
    },
  });
  const writes = await page.evaluate(async () => {
    const box = document.querySelector('.line input');
    window.writes.length = 0;
    for (const text of ['6', '60', '601']) {
      box.value = text;
      box.dispatchEvent(new InputEvent('input', { bubbles: true }));
      await Promise.resolve();
    }
    const before = window.writes.length;
    await new Promise((done) => requestAnimationFrame(() => setTimeout(() => setTimeout(done, 20), 0)));
    return { before, after: [...window.writes] };
  });
  assert.equal(writes.before, 0, 'nothing is written before the frame');
  assert.equal(writes.after.filter((key) => key.startsWith('softcrumb.formula.')).length, 1);
  await page.reload();
  await ready(page);
  assert.equal(await page.locator('.line input').first().inputValue(), '601');
});
