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
/// Boxes that mean something when they are empty: the best rows, the usual room, as the kitchen is, no price, none for the teacher.
const MAY_BE_EMPTY = /^(tin-rows|tin-room|melt-|pantry-|class-shown)/;
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

for (const place of ['Formula', 'Batch', 'Chocolate']) {
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

test('a weight is read however it is written, with a unit behind it or none', async (desk) => {
  const page = new Formula((await desk.open('phone')).page);
  const box = page.weight('Final dough', 'White sugar');
  for (const [typed, grams] of WEIGHTS) {
    await page.type(box, typed);
    assert.equal(await box.getAttribute('aria-invalid'), null, typed);
    const share = Number(await page.percent('Final dough', 'White sugar').inputValue());
    assert.ok(Math.abs(share - (100 * grams) / 480) <= 0.06, `${typed}: ${share}`);
    assert.equal(await box.inputValue(), typed);
  }
});

test('where the browser writes a comma, figures have one, and either mark is read', async (desk) => {
  const page = new Formula((await desk.open('phone', { locale: 'de-DE' })).page);
  assert.ok((await page.keyFigures()).some(({ value }) => /\d,\d/.test(value)));
  for (const typed of ['9,6', '9.6']) {
    await page.type(page.weight('Final dough', 'Salt'), typed);
    assert.equal(await page.percent('Final dough', 'Salt').inputValue(), '2');
  }
  await page.saysNothingWrong();
});

test('the last good figures are dimmed while a box cannot be read, and follow again once it can', async (desk) => {
  const page = new Formula((await desk.open('phone')).page);
  const dim = () => page.keyFigure('Dough').evaluate((figure) => Number(getComputedStyle(figure).opacity));
  assert.equal(await dim(), 1);
  await page.type(page.weight('Final dough', 'Salt'), 'some');
  assert.ok((await dim()) < 1);
  await page.type(page.weight('Final dough', 'Whole milk'), '122');
  assert.ok((await dim()) < 1, 'one box is still not read');
  await page.type(page.weight('Final dough', 'Salt'), '9');
  assert.equal(await dim(), 1);
});

test('text that cannot be read is still there after a look at another place', async (desk) => {
  const page = new Formula((await desk.open('phone')).page);
  const box = page.weight('Final dough', 'Salt');
  await page.type(box, '8,,6');
  await page.go('Batch');
  await page.stale.waitFor();
  await page.go('Formula');
  assert.equal(await box.inputValue(), '8,,6');
  await trouble(box);
});

const NAMES = ['<img src=x onerror="document.title=1">', '</script><b>bold', 'خبز طري بالشوكولاتة', 'שלום \u202E olleh',
  '{{name}} ${1}', '🍞'.repeat(20), 'x'.repeat(120), '   '];

test('names with markup, of any script and of any length are shown as they were typed', async (desk) => {
  const page = new Formula((await desk.open('phone')).page);
  for (const name of NAMES) {
    await page.openStream((await page.streams())[0]);
    const box = page.dialog.getByRole('textbox', { name: 'Name' });
    await box.fill(name);
    await drawn(page.page);
    await page.close();
    assert.equal(await page.page.locator('main img, main b').count(), 0, 'no markup comes to life');
    const wide = await page.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(wide <= 0, `“${name}” makes the page ${wide} px too wide`);
    await page.saysNothingWrong([name]);
    const shown = await page.streams();
    await page.page.reload();
    await ready(page.page);
    // A sign that turns the reading direction round is left out: it could make a name read as another.
    // Spaces around a name are no part of it.
    assert.deepEqual(await page.streams(), shown.map((name) => name.replace('\u202E', '').trim()), `“${name}” is there again`);
  }
});

test('a hundred ingredients can be put in, and stay quick to type into', async (desk) => {
  const { page } = await desk.open('phone');
  const formula = new Formula(page);
  const key = await openKey(page);
  const record = await openRecord(page);
  const lines = record.formula.streams[2].lines;
  lines.push(...Array.from({ length: 100 - lines.length }, () => ({ ingredient: 200, name: 'Water', mass_g: 1 })));
  await put(page, key, JSON.stringify(record));
  await page.reload();
  await ready(page);
  const shown = () => formula.stream('Final dough').getByRole('group').count();
  assert.equal(await shown(), 100);
  await formula.add('Final dough', 'Water');
  assert.equal(await shown(), 101);
  await formula.saysNothingWrong();
  const took = await page.evaluate(async () => {
    const box = document.querySelector('main .line input');
    const begun = performance.now();
    box.value = '59';
    box.dispatchEvent(new Event('input', { bubbles: true }));
    await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
    return performance.now() - begun;
  });
  assert.ok(took < 500, `${took} ms`);
  await page.reload();
  await ready(page);
  assert.equal(await shown(), 101);
});

test('more streams than a formula may have are refused in words, and what is there opens again', async (desk) => {
  const { page } = await desk.open('phone');
  const formula = new Formula(page);
  const streams = () => page.getByRole('main').getByRole('button', { name: 'Add an ingredient' }).count();
  for (let more = 0; more < 14; more += 1) {
    await page.getByRole('main').getByRole('button', { name: 'Add a stream' }).click();
    await formula.dialog.waitFor();
    const kind = formula.dialog.getByRole('button', { name: 'Wash' });
    if ((await kind.count()) > 0) await kind.click();
    else {
      await formula.dialog.getByText('as many streams as one may have').waitFor();
      await formula.close();
    }
    await formula.dialog.waitFor({ state: 'hidden' });
  }
  const there = await streams();
  assert.equal(there, 12);
  await formula.saysNothingWrong();
  await page.reload();
  await ready(page);
  assert.equal(await formula.name(), 'Lantern Lane chocolate loaf');
  assert.equal(await streams(), there, 'all that was shown is there again');
});
