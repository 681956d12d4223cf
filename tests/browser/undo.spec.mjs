//! Undo takes back the last change, wherever it was made: formula, class, plan, bench.

import assert from 'node:assert/strict';
import { onFriday } from './pages/day.mjs';
import { Formula } from './pages/formula.mjs';
import { all } from './pages/storage.mjs';
import { counts, holds, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';


/// Types key by key, as on a keyboard.
async function typed(box, text) {
  await box.fill('');
  await box.pressSequentially(text);
  await box.blur();
}

test('each box of the class is one step back, in the order of the work, and forward again', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const salt = page.weight('Final dough', 'Salt');
  await page.type(salt, '9.1');
  await page.go('Batch');
  const students = page.page.getByRole('textbox', { name: /^Students in the room/ });
  const loaves = page.page.getByRole('textbox', { name: /^Loaves each/ });
  await typed(students, '14');
  await typed(loaves, '3');
  await page.undo();
  await page.page.getByRole('paragraph').filter({ hasText: 'Undone: the last change of plan, bench, class or supplies.' }).waitFor();
  await holds(loaves, '1');
  await holds(students, '14');
  await page.undo();
  await holds(students, '12');
  await until(async () => (await all(page.page))['softcrumb.class'], (text) => /"students":12/.test(text), 'and is stored');
  await page.undo();
  assert.equal(await page.canUndo(), false);
  for (let step = 0; step < 3; step += 1) await page.redo();
  await holds(students, '14');
  await holds(loaves, '3');
  await page.go('Formula');
  await holds(salt, '9.1');
});

test('what is changed after undo is not overwritten by redo', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.go('Batch');
  const students = page.page.getByRole('textbox', { name: /^Students in the room/ });
  await typed(students, '14');
  await page.undo();
  await page.go('Formula');
  await page.type(page.weight('Final dough', 'Salt'), '9.1');
  await counts(page.tool('Redo'), 0, 'nothing to redo');
});

test('what is noted at the bench is taken back, and a bake that is in the log comes to no bench again', async (session) => {
  const { page, day } = await onFriday(session);
  const app = new Formula(page);
  await day.start();
  await day.goTo('Weigh and mix the dough');
  const warm = page.getByLabel(/^Dough temperature/);
  await day.otherwise();
  const before = await warm.inputValue();
  await typed(warm, '22');
  await day.leave();
  await app.undo();
  await page.getByRole('button', { name: 'Back to the bench' }).click();
  await day.otherwise();
  await holds(warm, before);
  await typed(warm, '22');
  await day.stop();
  await day.log.locator('summary').first().waitFor();
  while (await app.canUndo()) await app.undo();
  await until(async () => (await all(page))['softcrumb.bench'] ?? '', (text) => text === '', 'no bench is stored');
  await counts(day.bakes, 1);
});

test('a time that is not one gives way to the time that holds, and undo brings the one before', async (session) => {
  const { page } = await onFriday(session);
  const app = new Formula(page);
  const asleep = page.getByLabel('Asleep from');
  const before = await asleep.inputValue();
  await asleep.fill('');
  await asleep.blur();
  await holds(asleep, before);
  await asleep.fill('21:30');
  await asleep.blur();
  await app.undo();
  await holds(asleep, before);
});
