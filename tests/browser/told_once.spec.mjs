//! What is told once and the same everywhere: chocolate, names of parts and phases, weights of a visit, tins, words.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { ready } from './launch.mjs';
import { BatchPage } from './pages/batch.mjs';
import { ChocolatePage } from './pages/chocolate.mjs';
import { Formula } from './pages/formula.mjs';
import { HeatPage } from './pages/heat.mjs';
import { counts, drawn, holds, reads, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const [LINK, OTHER] = readFileSync(new URL('../sheet/samples/v1.links.txt', import.meta.url), 'utf8').split('\n');

test('a baker in a cold kitchen is not told of lumps that the steps do not make, and reads what pouring would do', async (session) => {
  const { page } = await session.open('phone');
  const heat = await new HeatPage(page).open();
  await heat.box('Room').fill('8');
  const chocolate = await new ChocolatePage(page).open();
  await page.getByRole('textbox', { name: /^Liquid temperature/ }).fill('50');
  const melting = page.getByRole('region', { name: 'Melting' });
  await reads(melting, /Over hot water, as in the steps: smooth\. Hot liquid poured on it instead: [\d.]+ °C, \S+/);
  await reads(melting, /The other way: hot liquid poured on the chocolate/);
  assert.notEqual(await melting.getAttribute('data-verdict'), 'wrong');
  assert.match(await chocolate.key('Syrup'), /Drizzle/);
  // The card has the part's own name.
  await page.getByRole('region', { name: 'Chocolate and water', exact: true }).waitFor();
  await page.getByRole('region', { name: 'Inside each ball', exact: true }).waitFor();
});

test('a pupil reads whose weights are shown, and where the formula as it was written begins', async (session) => {
  const { page } = await session.open('phone', { at: `#loaf=${LINK}` });
  await reads(page.getByRole('region', { name: 'What to weigh' }), /To weigh for 9 × 70 g/);
  const written = page.getByRole('region', { name: 'The formula as written' });
  assert.equal(await page.locator('.dough-part').count(), 0, 'the formula is closed');
  await new Formula(page).openWritten();
  await reads(written, /Made once, not scaled\. To bake, go by the weights above\./);
  const top = (one) => one.evaluate((element) => element.getBoundingClientRect().top);
  const first = page.locator('.dough-part').first();
  assert.ok(await top(page.getByRole('region', { name: 'What to weigh' })) < await top(written));
  assert.ok(await top(written) < await top(first), 'it stands above the formula');
});

test('a trial in a visit says that it is tried, and has one button that keeps', async (session) => {
  const { page } = await session.open('phone', { at: `#loaf=${LINK}` });
  const keep = page.getByRole('button', { name: /^Keep/ });
  await page.getByRole('button', { name: 'Try something without changing it' }).click();
  await page.getByRole('region', { name: 'The formula as you try it' }).waitFor();
  await counts(page.getByRole('region', { name: 'The formula as written' }), 0, 'it is not as written');
  assert.deepEqual(await keep.allInnerTexts(), ['Keep'], 'the trial');
  await page.getByRole('button', { name: 'Drop', exact: true }).click();
  await page.getByRole('region', { name: 'The formula as written' }).waitFor();
  assert.deepEqual(await keep.allInnerTexts(), ['Keep it'], 'the formula of the link');
});

test('the labels of a pupil’s tin are as wide as their boxes on a phone', async (session) => {
  const { page } = await session.open('phone', { at: `#loaf=${LINK}`, locale: 'en-GB' });
  await page.getByText('or my tin', { exact: true }).click();
  await page.getByRole('textbox', { name: /^Depth/ }).waitFor();
  const narrow = await page.locator('.how-many details .number-box').evaluateAll((all) => all
    .filter((one) => one.querySelector('label').getBoundingClientRect().width < 0.9 * one.getBoundingClientRect().width)
    .map((one) => one.innerText));
  assert.deepEqual(narrow, []);
});

test('the notice of a link is closed for that link, also after a change and a reload; its button stays', async (session) => {
  const { page, address } = await session.open('phone', { at: `#loaf=${LINK}` });
  const app = new Formula(page);
  const notice = app.notice('This formula came with a link');
  await notice.waitFor();
  await page.locator('.foot').getByRole('button', { name: 'Close the notice' }).click();
  await notice.waitFor({ state: 'hidden' });
  await page.reload();
  await ready(page);
  await page.getByRole('region', { name: 'What to weigh' }).waitFor();
  await counts(notice, 0, 'closed after a reload');
  const before = page.url();
  await app.openWritten();
  await app.type(app.weight('Final <b>dough</b>', 'Whole milk'), '150');
  await until(() => page.url(), (url) => url !== before, 'the address has the change');
  await page.waitForTimeout(1500);
  await page.reload();
  await ready(page);
  await page.getByRole('region', { name: 'What to weigh' }).waitFor();
  await counts(notice, 0, 'closed after a change, too');
  await page.getByRole('button', { name: 'Keep it', exact: true }).waitFor();
  if (OTHER) {
    await page.goto(`${address}?other#loaf=${OTHER}`);
    await ready(page);
    await notice.waitFor();
  }
});

test('a bottom typed as wide as the rim is there after a reload', async (session) => {
  const { page } = await session.open('phone');
  await new BatchPage(page).open();
  await page.getByRole('textbox', { name: /^Length at the rim/ }).fill('30');
  await page.getByRole('textbox', { name: /^Length at the bottom/ }).fill('30');
  await drawn(page);
  await page.reload();
  await ready(page);
  await new BatchPage(page).open();
  await holds(page.getByRole('textbox', { name: /^Length at the bottom/ }), '30');
});

test('true hydration has one decimal in its boxes, as beside them, and Batch says what it counts', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  await formula.openRows();
  const shown = (await formula.keyFigures()).find((one) => one.label === 'True hydration').value;
  const box = page.getByRole('textbox', { name: /^Target: True hydration/ });
  await until(() => box.inputValue(), (text) => shown.startsWith(`${text}`), shown);
  await new BatchPage(page).open();
  await page.getByRole('button', { name: /True hydration as weighed, less the steam/ }).first().waitFor();
});

for (const locale of ['en-GB', 'es-ES', 'ja-JP']) {
  test(`no text of a button touches its border on a phone (${locale})`, async (session) => {
    // The paste of the sample asks for long buttons on Day.
    const { page } = await session.open('phone', { at: `#loaf=${LINK}`, locale });
    for (const place of ['formula', 'batch', 'heat', 'chocolate', 'day']) {
      await page.goto(`${page.url().split('#')[0]}#${place}`);
      await drawn(page);
      await page.evaluate(() => document.querySelectorAll('main details:not([open])').forEach((one) => { one.open = true; }));
      await drawn(page);
      const tight = await page.evaluate(() => [...document.querySelectorAll('.button, .choice label')].flatMap((button) => {
        const style = getComputedStyle(button);
        const box = button.getBoundingClientRect();
        if (!box.width || style.borderLeftColor === 'rgba(0, 0, 0, 0)') return [];
        const texts = [...button.childNodes].filter((node) => node.nodeType === 3 && node.data.trim());
        const lines = texts.flatMap((node) => {
          const text = document.createRange();
          text.selectNodeContents(node);
          return [...text.getClientRects()].filter((line) => line.width);
        });
        const touches = lines.some((line) => line.left < box.left + 6 || line.right > box.right - 6 || line.top < box.top + 3 || line.bottom > box.bottom - 3);
        return touches || box.right > innerWidth ? [button.innerText] : [];
      }));
      assert.deepEqual(tight, [], place);
    }
  });
}
