//! A picked ingredient goes where it was asked for: in place of another, or as a new line.

import assert from 'node:assert/strict';
import { Formula } from './pages/formula.mjs';
import { counts, drawn } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const NEW = 'Maple syrup';

/// Picks an ingredient by its name, in the dialog that is open.
async function pick(page, food) {
  await page.dialog.getByRole('searchbox', { name: 'Search by name' }).fill(food);
  await page.dialog.getByRole('button', { name: new RegExp(`^${food}`) }).first().click();
  const done = page.dialog.getByRole('button', { name: 'Done' });
  await page.page.waitForFunction(() => !document.querySelector('dialog[open]') || document.querySelector('.picked'));
  if (await done.count() > 0) await done.click();
  await page.dialog.waitFor({ state: 'hidden' });
  await drawn(page.page);
}

/// Every line of the formula: its part, its place there, its ingredient, its weight.
async function lines(page) {
  const all = [];
  for (const part of await page.parts()) {
    const rows = page.part(part).getByRole('group');
    for (let place = 0; place < await rows.count(); place += 1) {
      const row = rows.nth(place);
      const weight = await row.getByRole('textbox').first().inputValue();
      all.push({ part, place, food: await row.getAttribute('aria-label'), weight });
    }
  }
  return all;
}

test('every ingredient of a formula can be changed for another, its weight stays, and undo brings it back', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const before = await lines(page);
  assert.ok(before.length > 10, `${before.length} lines`);
  for (const [at, { part, food, weight }] of before.entries()) {
    await page.openLine(part, food);
    await page.dialog.getByRole('button', { name: 'Replace the ingredient' }).click();
    await page.dialog.getByRole('heading', { name: `Replace ${food}` }).waitFor();
    await pick(page, NEW);
    const after = await lines(page);
    assert.deepEqual([after[at].food, after[at].weight], [NEW, weight], `${part}, ${food}`);
    await page.undo();
    assert.deepEqual(await lines(page), before);
  }
}, { seconds: 120 });

test('an ingredient of one’s own takes the place of another', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.openLine('Final dough', 'White sugar');
  await page.dialog.getByRole('button', { name: 'Replace the ingredient' }).click();
  await page.dialog.getByRole('button', { name: 'An ingredient of my own' }).click();
  await page.dialog.getByRole('textbox', { name: 'Name' }).fill('Date syrup');
  await page.dialog.getByRole('button', { name: 'Use it' }).click();
  await page.line('Final dough', 'Date syrup').waitFor();
  await counts(page.line('Final dough', 'White sugar'), 0);
});

test('an ingredient picked for the syrup is a new line of it, its weight still open', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.go('Chocolate');
  const syrup = page.part('Chocolate and water');
  const count = await syrup.getByRole('group').count();
  await syrup.getByRole('button', { name: 'Add to the syrup' }).click();
  await pick(page, NEW);
  await syrup.getByRole('group', { name: NEW }).waitFor();
  await counts(syrup.getByRole('group'), count + 1);
});

/// What people type, and what must come first. Other names for foods: common practice.
const SEARCHES = [
  ['all-purpose', 'Plain white flour'], ['plain', 'Plain white flour'], ['caster', 'White sugar'], ['dried yeast', 'Active dry yeast'],
  ['double cream', 'Rich whipping cream'], ['chips', 'Semisweet chocolate'], ['golden syrup', 'Corn syrup'], ['eggs', 'Egg'],
  ['sourdough', 'Strong white bread flour'], ['butter', 'Butter, unsalted'], ['salt', 'Salt'], ['instant', 'Instant yeast'],
];

test('search finds what people type, the exact word first; nothing found is said, with a way out', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.part('Final dough').getByRole('button', { name: 'Add an ingredient' }).click();
  await page.opened();
  const box = page.dialog.getByRole('searchbox', { name: 'Search by name' });
  for (const [typed, first] of SEARCHES) {
    await box.fill(typed);
    await drawn(page.page);
    assert.equal(await page.dialog.locator('.pick span').first().innerText(), first, typed);
  }
  await box.fill('sourdough');
  await page.dialog.getByText('A sourdough starter is flour and water').waitFor();
  await box.fill('unobtainium');
  await page.dialog.getByText('Nothing here is called “unobtainium”').waitFor();
  await counts(page.dialog.locator('.pick'), 0);
  await page.dialog.getByRole('button', { name: 'An ingredient of my own' }).click();
  await page.dialog.getByRole('textbox', { name: 'Name' }).waitFor();
});

test('several ingredients are added one after the other, and the caret is then in the first one’s weight', async (session) => {
  for (const how of ['Done', 'Escape']) {
    const page = new Formula((await session.open('phone')).page);
    await page.part('Final dough').getByRole('button', { name: 'Add an ingredient' }).click();
    await page.opened();
    await page.dialog.getByRole('searchbox', { name: 'Search by name' }).fill('honey');
    await page.dialog.getByRole('button', { name: /^Honey/ }).first().click();
    await page.dialog.getByRole('button', { name: /^Olive oil/ }).first().click();
    await page.dialog.getByText('Honey, Olive oil').waitFor();
    if (how === 'Done') await page.dialog.getByRole('button', { name: 'Done' }).click();
    else await page.page.keyboard.press('Escape');
    await page.dialog.waitFor({ state: 'hidden' });
    await drawn(page.page);
    await drawn(page.page);
    assert.ok(await page.weight('Final dough', 'Honey').evaluate((box) => box === document.activeElement), how);
    await page.page.keyboard.type('30');
    await page.page.keyboard.press('Enter');
    await page.page.keyboard.type('12');
    assert.equal(await page.weight('Final dough', 'Honey').inputValue(), '30');
    assert.equal(await page.weight('Final dough', 'Olive oil').inputValue(), '12');
  }
});
