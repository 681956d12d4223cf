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
    await page.dialog.getByRole('button', { name: 'Change the ingredient' }).click();
    await page.dialog.getByRole('heading', { name: `In place of ${food}` }).waitFor();
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
  await page.dialog.getByRole('button', { name: 'Change the ingredient' }).click();
  await page.dialog.getByRole('button', { name: 'An ingredient of my own' }).click();
  await page.dialog.getByRole('textbox', { name: 'Name' }).fill('Date syrup');
  await page.dialog.getByRole('button', { name: 'Use it' }).click();
  await page.line('Final dough', 'Date syrup').waitFor();
  await counts(page.line('Final dough', 'White sugar'), 0);
});

test('an ingredient picked for the syrup is a new line of it, its weight still open', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.go('Chocolate');
  const syrup = page.part('Syrup for the top');
  const count = await syrup.getByRole('group').count();
  await syrup.getByRole('button', { name: 'Add to the syrup' }).click();
  await pick(page, NEW);
  await syrup.getByRole('group', { name: NEW }).waitFor();
  await counts(syrup.getByRole('group'), count + 1);
});
