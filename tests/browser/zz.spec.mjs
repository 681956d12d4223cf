//! Whatever is typed is answered where it stands, in words; the text is kept and the last good figures stay.

import assert from 'node:assert/strict';
import { ready } from './launch.mjs';
import { Formula } from './pages/formula.mjs';
import { all, openKey, openRecord, put } from './pages/storage.mjs';
import { drawn } from './pages/whole.mjs';
import { test } from './promises.mjs';

/// What no box takes, whatever it is for.
const NEVER = ['', ' ', 'abc', '-', '.', ',', '1e99', '-1e99', 'NaN', 'Infinity', '-inf', '∞', '1..2', '1,2,3', '1 2', '5 bananas',
  '0x10', '1/0', '--5', '<b>5</b>', '5; drop', '٪', '🍞', '9'.repeat(400), 'e5', '1e', 'ثلاثة'];
/// Boxes that mean something when they are empty: the best rows, the usual room, as the kitchen is, no price.
const MAY_BE_EMPTY = /^(tin-rows|tin-room|melt-|pantry-)/;
/// Boxes for a temperature, which may be below zero.
const BELOW_ZERO = /^(syrup-at|melt-)/;
/// What a weight takes, and what it means in grams.
const WEIGHTS = [['12,5', 12.5], ['  40 ', 40], ['40 g', 40], ['0.04kg', 40], ['1 oz', 28.35], ['2½', 2.5], ['½', 0.5], ['3/4', 0.75],
  ['٤٠', 40], ['４０', 40], ['1e2', 100], ['+7', 7]];

/// The words at a box: told to be wrong, and described by a sentence that stands there.
async function trouble(box) {
  assert.equal(await box.getAttribute('aria-invalid'), 'true');
  const id = await box.getAttribute('aria-describedby');
  assert.ok(id, 'the box names its words');
  const words = await box.page().locator(`[id="${id}"]`).innerText();
  assert.match(words, /[A-Z].{8,}\.\s*$/s, 'a whole sentence');
  return words;
}

async function boxes(page) {
  const found = await page.page.getByRole('main').locator('input[inputmode=decimal]').all();
  return Promise.all(found.map(async (box) => {
    const id = await box.getAttribute('id');
    return { id, kind: id.replace(/[-\d]+$/, ''), box: page.page.locator(`[id="${id}"]`) };
  }));
}

async function tryBox(page, box, id) {
  const before = await box.inputValue();
  const figures = await page.keyFigures();
  const kept = await all(page.page);
  const never = id.match(BELOW_ZERO) ? NEVER : [...NEVER, '-3'];
  for (const text of never.filter((text) => text.trim() || !id.match(MAY_BE_EMPTY))) {
    await page.type(box, text);
    assert.equal(await box.inputValue(), text, `${id}: the text stays`);
    await trouble(box).catch((wrong) => { throw new Error(`${id}, “${text}”: ${wrong.message}`); });
    await page.stale.waitFor();
    assert.deepEqual(await page.keyFigures(), figures, `${id}, “${text}”: the last good figures stand`);
    await page.saysNothingWrong([text]);
  }
  await page.page.waitForTimeout(1200);
  assert.deepEqual(await all(page.page), kept, `${id}: nothing of it is kept`);
  await page.type(box, before);
  assert.equal(await box.getAttribute('aria-invalid'), null);
  await page.stale.waitFor({ state: 'hidden' });
}

for (const place of ['Batch']) {
  test(`${place}: every kind of box answers bad input in words and keeps the text and the last good figures`, async (desk) => {
    const page = new Formula((await desk.open('phone')).page);
    await page.go(place);
    for (const fold of await page.page.getByRole('main').locator('summary').all()) await fold.click();
    const kinds = new Set();
    for (const { id, kind, box } of await boxes(page)) {
      if (kinds.has(kind)) continue;
      kinds.add(kind);
      await tryBox(page, box, id);
    }
    assert.ok(kinds.size >= 2, [...kinds].join());
  }, { seconds: 400 });
}

