//! Nothing is lost: each change is stored at once, and every fault of the storage is reported in a sentence.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { ready } from './launch.mjs';
import { Formula } from './pages/formula.mjs';
import { all, fill, KEYS, openKey, openRecord, put, refuseAll, withhold, written } from './pages/storage.mjs';
import { drawn, holds, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const salt = (page) => page.weight('Final dough', 'Salt');

/// What a record says of the salt, in grams.
function saltOf(record) {
  const lines = record.formula.streams.flatMap((part) => part.lines);
  return lines.find((line) => line.name === 'Salt').mass_g;
}

/// What “Save to a file” hands over.
async function saved(page) {
  const [download] = await Promise.all([
    page.page.waitForEvent('download'),
    page.page.getByRole('button', { name: 'Save to a file' }).first().click(),
  ]);
  return JSON.parse(readFileSync(await download.path(), 'utf8'));
}

async function reloaded(page) {
  await page.page.reload();
  await ready(page.page);
  await drawn(page.page);
}

test('each change is kept as it is typed: a page closed right after opens with it', async (session) => {
  const { context, page, address } = await session.open('phone');
  const formula = new Formula(page);
  await formula.type(salt(formula), '9.25');
  assert.equal(saltOf(await openRecord(page)), 9.25, 'kept by the next frame');
  await page.close();
  const later = new Formula(await context.newPage());
  await later.page.goto(address);
  await ready(later.page);
  await holds(salt(later), '9.25');
  await later.go('Batch');
  await reloaded(later);
  await later.page.getByRole('heading', { level: 1, name: 'Batch' }).waitFor({ state: 'attached' });
});

test('a storage that is full is said so, work goes on, and the formula can be saved to a file', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  await fill(page);
  await formula.type(salt(formula), '9.123456789012345');
  await formula.notice('There is no room left').waitFor();
  await formula.type(salt(formula), '9.6000000001');
  await holds(formula.percent('Final dough', 'Salt'), '2', 'figures follow: 9.6 of 480 g');
  assert.equal(saltOf(await saved(formula)), 9.6000000001);
  await page.evaluate(() => Object.keys(localStorage).filter((key) => key.startsWith('other.')).forEach((key) => localStorage.removeItem(key)));
  await formula.type(salt(formula), '9.3');
  await formula.notice('There is no room left').waitFor({ state: 'hidden' });
  await until(async () => saltOf(await openRecord(page)), (grams) => grams === 9.3, 'kept again once there is room');
});

for (const [name, before] of [['refuses every call', refuseAll], ['is withheld', withhold]]) {
  test(`a storage that ${name} is said so, work goes on, and the formula can be saved to a file`, async (session) => {
    const { page } = await session.open('phone', { before, blocked: true });
    const formula = new Formula(page);
    await formula.notice('This browser saves nothing for this page').waitFor();
    assert.equal(await formula.name(), 'Lantern Lane chocolate loaf');
    await formula.type(salt(formula), '9.2');
    await holds(formula.percent('Final dough', 'Salt'), '1.9');
    await formula.notice('This browser saves nothing for this page').waitFor();
    assert.equal(saltOf(await saved(formula)), 9.2);
    for (const place of ['Batch', 'Chocolate']) await formula.go(place);
    await formula.saysNothingWrong();
  });
}

const DAMAGE = ['', 'rubbish', '{"softcrumb":"formula","version":1', '[]', 'null', '{"softcrumb":"formula","version":1,"name":7}'];

test('a damaged formula is left as it is, said so, and the others open', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const key = await openKey(page);
  for (const text of DAMAGE) {
    await put(page, key, text);
    await put(page, KEYS.open, key.replace('softcrumb.formula.', ''));
    await reloaded(formula);
    await formula.notice('damaged').waitFor();
    await formula.page.getByRole('main').getByRole('textbox').first().waitFor();
    await formula.saysNothingWrong();
    await written(page);
    assert.equal((await all(page))[key], text, 'it is left as it is');
    const [download] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save to a file' }).click()]);
    assert.equal(readFileSync(await download.path(), 'utf8'), text, 'and can be saved as it is');
  }
});

test('damage under any other key keeps no formula from opening', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  await formula.type(salt(formula), '9.4');
  await written(page);
  // The index is removed last, because it says which formula was changed last.
  for (const name of ['open', 'settings', 'kitchen', 'unfiled', 'shelf']) {
    for (const text of DAMAGE) {
      await put(page, KEYS[name], text);
      await reloaded(formula);
      await holds(salt(formula), '9.4', `${name}: ${text}`);
      await formula.saysNothingWrong();
    }
  }
});

test('what a newer release has written is never overwritten', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const key = await openKey(page);
  const newer = (text) => text.replace('"version":1', '"version":99');
  const kept = await all(page);
  for (const under of [key, KEYS.shelf, KEYS.settings, KEYS.kitchen]) {
    const text = newer(kept[under] ?? '{"softcrumb":"settings","version":1}');
    assert.ok(text.includes(':99'));
    await put(page, under, text);
    await reloaded(formula);
    await formula.notice('written by a newer release').waitFor();
    const box = page.getByRole('main').getByRole('textbox').first();
    await formula.type(box, '61');
    await formula.type(box, '62');
    await written(page);
    assert.equal((await all(page))[under], text, `${under} is left as it is`);
    await formula.saysNothingWrong();
    await page.evaluate((kept) => { localStorage.clear(); for (const [key, text] of Object.entries(kept)) localStorage.setItem(key, text); }, kept);
    await reloaded(formula);
  }
});

test('two open pages follow each other and overwrite nothing', async (session) => {
  const { context, page, address } = await session.open('phone');
  const one = new Formula(page);
  const other = new Formula(await context.newPage());
  await other.page.goto(address);
  await ready(other.page);
  await one.type(salt(one), '9.5');
  await until(() => salt(other).inputValue(), (text) => text === '9.5', 'the other page follows');
  const milk = (app) => app.weight('Final dough', 'Whole milk');
  await other.type(milk(other), '130');
  await until(() => milk(one).inputValue(), (text) => text === '130', 'and back');
  await holds(salt(one), '9.5');
  await one.type(salt(one), '9.7');
  await until(() => salt(other).inputValue(), (text) => text === '9.7', 'still');
  await holds(milk(other), '130');
  await Promise.all([written(page), written(other.page)]);
  await reloaded(one);
  await holds(salt(one), '9.7');
  await holds(milk(one), '130');
});
