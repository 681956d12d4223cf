//! Formula in the hand: its name, its parts, a new formula from nothing, copies, and the bin.

import assert from 'node:assert/strict';
import { Formula } from './pages/formula.mjs';
import { counts, drawn, holds, is, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const NAME = 'Lantern Lane chocolate loaf';

test('a tap on the name renames the formula, and undo brings the old name back', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.nameButton.click();
  await page.opened();
  await page.dialog.getByRole('textbox', { name: 'Name' }).fill('Tuesday loaf');
  await page.close();
  assert.equal(await page.name(), 'Tuesday loaf');
  await page.undo();
  assert.equal(await page.name(), NAME);
});

test('the head of a part says its share and its liquid, and a tap on that opens the boxes', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  // 58 g and 14 g of 480 g of flour, with 112 g of water: common practice for a scald.
  await until(async () => (await page.part('Scald').locator('.settings').innerText()).replaceAll(/[\u00a0\u202f]/g, ' '),
    (text) => /^15 % of flour · 155\.6 % liquid/.test(text), 'the head says it');
  await page.part('Scald').locator('.settings').click();
  const share = page.part('Scald').getByRole('textbox', { name: /flour in this part/i });
  await share.waitFor();
  await page.type(share, '10');
  // A tenth of 480 g is 48 g, in the same proportion as 58 : 14.
  await until(() => page.weight('Scald', 'Medium rye flour').inputValue(), (text) => Math.abs(Number(text) - 9.33) < 0.05, 'the lines follow');
});

/// A bread of fourteen lines in five parts, as an evening class weighs it: part, ingredient, grams.
const LOAF = [
  ['Scalded paste', 'Strong white bread flour', '60'], ['Scalded paste', 'Water', '110'],
  ['Preferment', 'Strong white bread flour', '150'], ['Preferment', 'Water', '80'], ['Preferment', 'Instant yeast', '1'],
  ['Final dough', 'Strong white bread flour', '290'], ['Final dough', 'Whole milk', '110'], ['Final dough', 'White sugar', '55'],
  ['Final dough', 'Butter, unsalted', '60'], ['Final dough', 'Salt', '9'], ['Final dough', 'Instant yeast', '4'],
  ['Filling', 'Dark chocolate', '80'],
  ['Topping', 'Dark chocolate', '60'], ['Topping', 'Water', '20'],
];

test('a new formula of fourteen lines in five parts takes at most 45 taps beside its digits, and nothing is complained about', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  let taps = 0;
  const tap = async (what) => {
    taps += 1;
    await what.click();
    await drawn(page);
    assert.equal(await page.locator('[aria-invalid]').count(), 0, 'no box is wrong');
    assert.equal(await page.locator('.error:not(:empty)').filter({ visible: true }).count(), 0, 'nothing is complained about');
  };
  await tap(formula.shelfButton);
  await formula.opened();
  await tap(formula.dialog.getByRole('button', { name: 'New formula' }));
  for (const kind of ['Scalded paste', 'Preferment', 'Filling', 'Topping']) await tap(formula.dialog.getByText(kind, { exact: true }));
  await tap(formula.dialog.getByRole('button', { name: 'Done' }));
  await formula.dialog.waitFor({ state: 'hidden' });
  for (const part of [...new Set(LOAF.map(([name]) => name))]) {
    const lines = LOAF.filter(([name]) => name === part);
    await tap(formula.part(part).getByRole('button', { name: 'Add an ingredient' }));
    await formula.opened();
    for (const [, food] of lines) await tap(formula.dialog.getByRole('button', { name: new RegExp(`^${food}`) }).first());
    await tap(formula.dialog.getByRole('button', { name: 'Done' }));
    await formula.dialog.waitFor({ state: 'hidden' });
    for (const [at, [, food, grams]] of lines.entries()) {
      const box = formula.weight(part, food);
      await until(() => box.evaluate((box) => box === document.activeElement), (focused) => focused, `${part}, ${food}: the caret is there`);
      assert.equal(await box.inputValue(), '', 'an empty box, not a nought');
      await page.keyboard.type(grams);
      if (at < lines.length - 1) {
        taps += 1;
        await page.keyboard.press('Enter');
      }
    }
  }
  console.log(`          ${taps} taps`);
  assert.ok(taps <= 45, `${taps} taps`);
  for (const [part, food, grams] of LOAF) await holds(formula.weight(part, food), grams);
  await is(async () => (await formula.keyFigures())[1].value, '929 g', 'the dough');
  await formula.saysNothingWrong();
}, { seconds: 120 });

test('an empty formula has dashes for its figures, and one sentence says why', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.openShelf();
  await page.dialog.getByRole('button', { name: 'New formula' }).click();
  await page.dialog.getByRole('button', { name: 'Done' }).click();
  const figures = await page.keyFigures();
  assert.deepEqual([figures[0].value, figures[2].value], ['–', '–']);
  const why = page.page.getByRole('main').getByText('Nothing is in it yet. Begin with the flour');
  await why.waitFor();
  await counts(why, 1);
  const { height } = await page.page.getByRole('banner').boundingBox();
  assert.ok(height <= 104, `${height} px`);
});

test('copies of a formula keep its name, each with a number of its own', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const seen = [];
  for (let copy = 0; copy < 4; copy += 1) {
    await page.openShelf();
    await page.dialog.getByRole('button', { name: 'Copy of this formula' }).click();
    await page.dialog.waitFor({ state: 'hidden' });
    seen.push(await page.name());
  }
  assert.deepEqual(seen, [2, 3, 4, 5].map((number) => `${NAME} (${number})`));
});

test('a formula that is binned while it is open makes room for another one, and no link is spoken of', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.openShelf();
  await page.dialog.getByRole('button', { name: `Delete ${NAME}` }).click();
  await until(() => page.name(), (name) => name !== NAME, 'another one is open');
  await page.close();
  await counts(page.page.getByText('came with a link'), 0);
});
