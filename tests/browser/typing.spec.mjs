//! A box that cannot be read says why beside it, keeps its text, and leaves the last valid figures.

import assert from 'node:assert/strict';
import { ready } from './launch.mjs';
import { Formula } from './pages/formula.mjs';
import { all, openKey, openRecord, put, written } from './pages/storage.mjs';
import { counts, drawn, holds, isInvalid, saysNothingWrong } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// What no box takes, whatever it is for.
const NEVER = ['', ' ', 'abc', '-', '.', ',', '1e99', '-1e99', 'NaN', 'Infinity', '-inf', '∞', '1..2', '1,2,3', '1 2', '5 bananas',
  '0x10', '1/0', '--5', '<b>5</b>', '5; drop', '٪', '🍞', '9'.repeat(400), 'e5', '1e', 'ثلاثة'];
/// Boxes that mean something when they are empty: the best rows, the usual room, as the kitchen is, no price.
const MAY_BE_EMPTY = /^(tin-rise|tin-rows|tin-room|tin-bottom\w*|melt-(liquid|chocolate|bowl)|pantry-|heat-(mixing|paste-bowl|across|flour)|warm-|cooling-from|kitchen-flour|(bulk|proof)-place)/;
/// Boxes for a temperature, which may be below zero.
const BELOW_ZERO = /^(syrup-at|melt-(liquid|chocolate|bowl)|kitchen-(room|flour|fridge|tap)|heat-(wanted|mixing-bowl|paste-bowl|flour)|warm-|cooling-from|phase-oven|heat-known-oven|kitchen-altitude|(bulk|proof)-(at|place))/;
/// A whole sentence.
const SENTENCE = /[A-Z].{8,}\.\s*$/s;
/// What a weight takes, and what it means in grams.
const WEIGHTS = [['12,5', 12.5], ['  40 ', 40], ['40 g', 40], ['0.04kg', 40], ['1 oz', 28.35], ['2½', 2.5], ['½', 0.5], ['3/4', 0.75],
  ['٤٠', 40], ['４０', 40], ['1e2', 100], ['+7', 7]];

/// The error at a box: it is marked as invalid and described by a visible sentence.
async function trouble(box) {
  await isInvalid(box);
  const id = await box.getAttribute('aria-describedby');
  assert.ok(id, 'the box names its words');
  const words = await box.page().locator(`[id="${id}"]`).innerText();
  assert.match(words, SENTENCE, 'a whole sentence');
  return words;
}

/// Runs in the page: types each text into the box in one go, waits for the frame it is shown in, and
/// notes all that a user then sees and all that is kept. The box ends as it was.
async function typeAll({ id, texts }) {
  const box = document.getElementById(id);
  // What is far off the screen is not laid out, and its words would be left out.
  for (const card of document.querySelectorAll('main .card')) card.style.contentVisibility = 'visible';
  const frame = () => new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  const keys = () => [...document.querySelectorAll('[aria-label="Key figures"] button')].map((key) => key.textContent);
  const type = async (text) => {
    box.value = text;
    box.dispatchEvent(new Event('input', { bubbles: true }));
    await frame();
  };
  const look = () => {
    const words = document.getElementById(box.getAttribute('aria-describedby') ?? '');
    const heard = [...document.querySelectorAll('.visually-hidden')].map((one) => one.textContent);
    const boxes = [...document.querySelectorAll('input')].filter((one) => one !== box).map((one) => one.value);
    const labels = [...document.querySelectorAll('[aria-label], [title]')].flatMap((one) => [one.ariaLabel ?? '', one.title]);
    return {
      shows: box.value, invalid: box.getAttribute('aria-invalid'), keys: keys(),
      said: words?.checkVisibility() ? words.innerText : '',
      stale: [...document.querySelectorAll('.stale')].some((one) => one.checkVisibility()),
      words: [document.title, document.body.innerText, ...heard, ...boxes, ...labels].join('\n'),
      kept: Object.fromEntries(Object.entries(localStorage)),
    };
  };
  // The box is scrolled into view, because what is far off the screen is not laid out.
  box.scrollIntoView({ block: 'center' });
  box.focus();
  await frame();
  await frame();
  const before = { text: box.value, ...look() };
  const seen = [];
  for (const text of texts) {
    await type(text);
    seen.push({ text, ...look() });
  }
  await type(before.text);
  return { before, seen, after: look() };
}

/// The keys under which something else is kept now; `old`: only those that were there before. A box that may be
/// empty may have begun a record that says nothing.
function changedKeys(before, now, old = false) {
  const keys = new Set([...Object.keys(before), ...(old ? [] : Object.keys(now))]);
  return [...keys].filter((key) => before[key] !== now[key]);
}

async function tryBox(page, id) {
  const never = id.match(BELOW_ZERO) ? NEVER : [...NEVER, '-3'];
  const texts = never.filter((text) => text.trim() || !id.match(MAY_BE_EMPTY));
  const { before, seen, after } = await page.page.evaluate(typeAll, { id, texts });
  assert.equal(before.invalid, null, `${id} is good at first`);
  assert.equal(seen.length, texts.length);
  for (const { text, ...now } of seen) {
    const where = `${id}, “${text.slice(0, 40)}”`;
    assert.equal(now.shows, text, `${where}: the text stays`);
    assert.equal(now.invalid, 'true', `${where}: told to be wrong`);
    assert.match(now.said, SENTENCE, `${where}: said in a whole sentence`);
    assert.equal(now.stale, true, `${where}: the figures are marked`);
    assert.deepEqual(now.keys, before.keys, `${where}: the last good figures stand`);
    assert.deepEqual(changedKeys(before.kept, now.kept), [], `${where}: nothing of it is kept`);
    saysNothingWrong(text.trim() ? now.words.replaceAll(text, '') : now.words);
  }
  assert.deepEqual([after.invalid, after.stale], [null, false], `${id} can be put right`);
  assert.deepEqual(changedKeys(before.kept, after.kept, true), [], `${id}: put right, nothing has changed`);
}

for (const place of ['Formula', 'Batch', 'Heat', 'Chocolate', 'Day']) {
  test(`${place}: every kind of box answers bad input in words and keeps the text and the last good figures`, async (session) => {
    const page = new Formula((await session.open('phone')).page);
    await page.go(place);
    const main = page.page.getByRole('main');
    await page.page.waitForFunction((opening) => document.querySelector('main input')
      && ![...document.querySelectorAll('main [role=status]')].some((one) => one.textContent.startsWith(opening)), 'Opening');
    const folded = main.locator('details:not([open]) > summary');
    while (await folded.count() > 0) await folded.first().click();
    const kept = await all(page.page);
    const ids = await main.locator('input[inputmode=decimal]').evaluateAll((boxes) => boxes.map((box) => box.id));
    const kinds = new Map(ids.map((id) => [id.replace(/-?\d+/g, ''), id]).reverse());
    for (const id of kinds.values()) await tryBox(page, id);
    assert.ok(kinds.size >= 2, [...kinds.keys()].join());
    await written(page.page);
    assert.deepEqual(changedKeys(kept, await all(page.page), true), [], 'nothing of it is kept, later either');
  });
}

test('a weight is read however it is written, with a unit behind it or none', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const box = page.weight('Final dough', 'White sugar');
  for (const [typed, grams] of WEIGHTS) {
    await page.type(box, typed);
    await isInvalid(box, false);
    const share = Number(await page.percent('Final dough', 'White sugar').inputValue());
    assert.ok(Math.abs(share - (100 * grams) / 480) <= 0.06, `${typed}: ${share}`);
    await holds(box, typed);
  }
});

test('where the browser writes a comma, figures have one, and either mark is read', async (session) => {
  const page = new Formula((await session.open('phone', { locale: 'de-DE' })).page);
  assert.ok((await page.keyFigures()).some(({ value }) => /\d,\d/.test(value)));
  for (const typed of ['9,6', '9.6']) {
    await page.type(page.weight('Final dough', 'Salt'), typed);
    await holds(page.percent('Final dough', 'Salt'), '2');
  }
  await page.saysNothingWrong();
});

test('the last good figures are dimmed while a box cannot be read, and follow again once it can', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const dim = () => page.keyFigure('Dough').evaluate((figure) => Number(getComputedStyle(figure).opacity));
  assert.equal(await dim(), 1);
  await page.type(page.weight('Final dough', 'Salt'), 'some');
  assert.ok((await dim()) < 1);
  await page.type(page.weight('Final dough', 'Whole milk'), '122');
  assert.ok((await dim()) < 1, 'one box is still not read');
  await page.type(page.weight('Final dough', 'Salt'), '9');
  assert.equal(await dim(), 1);
});

test('text that cannot be read is still there after a look at another place', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const box = page.weight('Final dough', 'Salt');
  await page.type(box, '8,,6');
  await page.go('Batch');
  await page.stale.waitFor();
  await page.go('Formula');
  await holds(box, '8,,6');
  await trouble(box);
});

const NAMES = ['<img src=x onerror="document.title=1">', '</script><b>bold', 'خبز طري بالشوكولاتة', 'שלום \u202E olleh',
  '{{name}} ${1}', '🍞'.repeat(20), 'x'.repeat(120), '   '];

test('names with markup, of any script and of any length are shown as they were typed', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  for (const name of NAMES) {
    await page.openPart((await page.parts())[0]);
    const box = page.dialog.getByRole('textbox', { name: 'Name' });
    await box.fill(name);
    await drawn(page.page);
    await page.close();
    await counts(page.page.locator('main img, main b'), 0, 'no markup comes to life');
    const wide = await page.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(wide <= 0, `“${name}” makes the page ${wide} px too wide`);
    await page.saysNothingWrong([name]);
    const shown = await page.parts();
    await page.page.reload();
    await ready(page.page);
    // A sign that turns the reading direction round is left out: it could make a name read as another.
    // Spaces around a name are no part of it.
    assert.deepEqual(await page.parts(), shown.map((name) => name.replace('\u202E', '').trim()), `“${name}” is there again`);
  }
});

test('a hundred ingredients can be put in, and stay quick to type into', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const key = await openKey(page);
  const record = await openRecord(page);
  const lines = record.formula.streams[2].lines;
  lines.push(...Array.from({ length: 100 - lines.length }, () => ({ ingredient: 200, name: 'Water', mass_g: 1 })));
  await put(page, key, JSON.stringify(record));
  await page.reload();
  await ready(page);
  const shown = () => formula.part('Final dough').getByRole('group').count();
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
}, { alone: true });

test('more parts than a formula may have are refused in words, and what is there opens again', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const parts = () => page.getByRole('main').getByRole('button', { name: 'Add an ingredient' }).count();
  for (let more = 0; more < 14; more += 1) {
    await page.getByRole('main').getByRole('button', { name: 'Add a part' }).click();
    await formula.dialog.waitFor();
    const kind = formula.dialog.getByRole('button', { name: 'Wash' });
    const full = formula.dialog.getByText('as many parts as one may have');
    // The texts of the dialog load with it.
    await kind.or(full).waitFor();
    if ((await kind.count()) > 0) await kind.click();
    else {
      await formula.close();
    }
    await formula.dialog.waitFor({ state: 'hidden' });
  }
  const there = await parts();
  assert.equal(there, 12);
  await formula.saysNothingWrong();
  await page.reload();
  await ready(page);
  assert.equal(await formula.name(), 'Lantern Lane chocolate loaf');
  assert.equal(await parts(), there, 'all that was shown is there again');
});
