//! A trial changes every figure and saves nothing until the user asks; each step can be undone and redone.

import assert from 'node:assert/strict';
import { ready } from './launch.mjs';
import { Formula } from './pages/formula.mjs';
import { all, keptForGood, written } from './pages/storage.mjs';
import { counts, drawn, holds, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const milk = (page) => page.weight('Final dough', 'Whole milk');
const value = async (page, label) => (await page.keyFigures()).find((figure) => figure.label === label);
const number = (text) => Number(text.match(/-?[\d.]+/)[0]);

test('a trial shows old and new beside each figure, and dropped it has changed nothing', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const figures = await page.keyFigures();
  const kept = await all(page.page);
  await page.tryOut();
  await page.trial.getByText('nothing is changed yet').waitFor();
  await page.type(milk(page), '160');
  const dough = await value(page, 'Dough');
  assert.equal(dough.value.replace(/\s/g, ' '), '982.6 g', '934.6 g and 48 more');
  assert.match(dough.was.replace(/\s/g, ' '), /was 934\.6 g \+48 g/);
  assert.match((await value(page, 'True hydration')).was, /was 64\.7[\s\S]*\spoints?/);
  assert.equal((await value(page, 'Salt')).was, undefined, 'what does not change says nothing');
  await page.trial.getByText(/Whole milk.*112.*160/).waitFor();
  await written(page.page);
  assert.deepEqual(await keptForGood(page.page), kept, 'nothing of it is kept for good');
  await page.dropTrial();
  await page.trial.waitFor({ state: 'hidden' });
  await until(async () => JSON.stringify(await page.keyFigures()), (seen) => seen === JSON.stringify(figures), 'the figures are as they were');
  await holds(milk(page), '112');
  await until(async () => JSON.stringify(await all(page.page)), (seen) => seen === JSON.stringify(kept), 'nothing is left of it');
});

test('a trial that is kept is there after a reload, and undo undoes it', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.tryOut();
  await page.type(milk(page), '160');
  await page.type(page.weight('Final dough', 'Salt'), '9.6');
  await page.trial.getByText('2 ingredients changed').waitFor();
  await page.keepTrial();
  await page.trial.waitFor({ state: 'hidden' });
  assert.equal((await value(page, 'Dough')).was, undefined);
  await page.undo();
  await holds(milk(page), '112');
  await holds(page.weight('Final dough', 'Salt'), '8.6');
  await page.redo();
  await page.page.reload();
  await ready(page.page);
  await drawn(page.page);
  await holds(milk(page), '160');
  await holds(page.weight('Final dough', 'Salt'), '9.6');
});

test('undo takes back the steps of a trial, then drops it, then goes on with what was kept', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.type(milk(page), '120');
  await page.tryOut();
  await page.type(milk(page), '160');
  await page.undo();
  await page.trial.waitFor();
  await holds(milk(page), '120');
  await page.redo();
  await holds(milk(page), '160');
  await page.undo();
  await page.undo();
  await page.trial.waitFor({ state: 'hidden' });
  await holds(milk(page), '120');
  await page.undo();
  await holds(milk(page), '112');
  assert.equal(await page.canUndo(), false);
});

test('each box is undo, in the order of the work, and forward again', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const steps = [['Whole milk', '112', '120'], ['Salt', '8.6', '9'], ['White sugar', '53', '60']];
  for (const [food, , to] of steps) {
    const box = page.weight('Final dough', food);
    await box.click();
    await box.press('Control+A');
    await box.pressSequentially(to);
  }
  await drawn(page.page);
  for (const [food, from] of steps.toReversed()) {
    await page.undo();
    await holds(page.weight('Final dough', food), from);
  }
  assert.equal(await page.canUndo(), false);
  for (const [food, , to] of steps) {
    await page.redo();
    await holds(page.weight('Final dough', food), to);
  }
});

/// Two points of 480 g flour are 9.6 g of water; a quarter less paste keeps the bread as it is.
const WHAT_IFS = [['Hydration +2 %', 2], ['Hydration −2 % (takes whole milk)', -2], ['Half the milk as water', 0], ['A quarter less paste', 0]];

for (const [name, points] of WHAT_IFS) {
  test(`one tap tries “${name}”, says what changes, and keeps nothing`, async (session) => {
    const page = new Formula((await session.open('phone')).page);
    const before = number((await value(page, 'True hydration')).value);
    const kept = await all(page.page);
    await page.whatIf(name);
    await page.trial.waitFor();
    const water = await value(page, 'True hydration');
    assert.ok(Math.abs(number(water.value) - before - points) <= 0.11, `${before}, ${water.value}`);
    if (points) assert.match(water.was, new RegExp(`was ${before}`));
    // The tint is for the eye only; what is heard stands in the trial's own sentence.
    const tinted = page.page.getByRole('main').locator('.line.changed');
    await until(() => tinted.count(), (seen) => seen > 0, 'changed boxes are tinted');
    await page.saysNothingWrong();
    assert.deepEqual(await keptForGood(page.page), kept);
    await page.dropTrial();
    assert.equal(number((await value(page, 'True hydration')).value), before);
  });
}

test('less water is taken from plain water where there is some, else from the liquid that the button names', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.openRow('What if');
  const less = page.page.getByRole('main').getByRole('button', { name: /^Hydration −2 %/ });
  // The example's final dough has milk and yolk, and no water.
  assert.deepEqual(await less.allInnerTexts(), ['Hydration −2 % (takes whole milk)']);
  await page.page.getByText('The final dough has too little plain water').waitFor();
  const yolk = await page.weight('Final dough', 'Egg yolk').inputValue();
  const poured = Number(await milk(page).inputValue());
  await less.click();
  await page.trial.waitFor();
  await drawn(page.page);
  // Two points of 480 g flour are 9.6 g of water; whole milk is 88.1 % water (USDA, SR Legacy 01077): 10.9 g.
  assert.ok(Math.abs(poured - Number(await milk(page).inputValue()) - 10.9) <= 0.2, await milk(page).inputValue());
  assert.equal(await page.weight('Final dough', 'Egg yolk').inputValue(), yolk);
  await page.trial.getByText(/Whole milk/).waitFor();
  await page.dropTrial();
  await page.whatIf('Hydration +2 %');
  await page.keepTrial();
  const water = page.weight('Final dough', 'Water');
  assert.ok(Math.abs(Number(await water.inputValue()) - 9.6) <= 0.05);
  // Half of what two points take is too little: the milk is named again.
  await page.type(water, '5');
  await until(() => less.allInnerTexts(), (names) => names.join() === 'Hydration −2 % (takes whole milk)', '5 g are too little');
  await page.type(water, '20');
  await until(() => less.allInnerTexts(), (names) => names.join() === 'Hydration −2 %', 'no other liquid is named');
  const kept = await milk(page).inputValue();
  await less.click();
  await page.trial.waitFor();
  await drawn(page.page);
  assert.ok(Math.abs(Number(await water.inputValue()) - 10.4) <= 0.05, await water.inputValue());
  assert.equal(await milk(page).inputValue(), kept, 'the milk stays');
});

test('a what-if that this dough cannot do is answered in words, and tries nothing', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  // Without its milk and yolk the example's final dough has no liquid left that could be adjusted.
  await page.type(milk(page), '0');
  await page.type(page.weight('Final dough', 'Egg yolk'), '0');
  await counts(page.page.getByRole('button', { name: 'Half the milk as water' }), 0, 'what means nothing is not offered');
  await page.whatIf('Hydration −2 %');
  await page.page.getByRole('main').getByRole('paragraph').filter({ hasText: /be adjusted/ }).waitFor();
  await counts(page.trial, 0);
});

test('a trial goes along to the other places, with old and new in their key figures', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.tryOut();
  await page.type(milk(page), '160');
  await page.go('Batch');
  await page.trial.getByText(/Whole milk/).waitFor();
  assert.match((await value(page, 'Dough to mix')).value, /977\.6|978/);
  assert.match((await value(page, 'Dough to mix')).was, /was 9(29\.6|30)/);
  assert.equal((await value(page, 'Pieces')).was === undefined, (await value(page, 'Pieces')).value.startsWith('9 '), 'each piece says if it weighs otherwise');
  await page.go('Heat');
  const dough = await value(page, 'Dough temperature');
  const [, was, difference] = dough.was.match(/^was ([\d.]+).°C\n([+−][\d.]+).°C$/);
  const moved = number(dough.value) - Number(was);
  assert.ok(moved < 0, 'more cold milk, a colder dough');
  assert.ok(Math.abs(moved - number(difference.replace('−', '-'))) <= 0.11, `${dough.value}, ${dough.was}`);
  assert.equal((await value(page, 'Paste')).was, undefined, 'the paste is as it was');
  await page.dropTrial();
  assert.equal((await value(page, 'Dough temperature')).was, undefined);
  assert.equal(number((await value(page, 'Dough temperature')).value), Number(was));
  await page.go('Batch');
  assert.match((await value(page, 'Dough to mix')).value, /929\.6|930/);
  assert.equal((await value(page, 'Dough to mix')).was, undefined);
});

test('more hot water in the paste shows old and new of paste and starch', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.tryOut();
  await page.type(page.weight('Scald', 'Water'), '60');
  await page.go('Heat');
  for (const [label, unit] of [['Paste', '°C'], ['Starch cooked', '%']]) {
    const { value: now, was } = await value(page, label);
    assert.match(was, new RegExp(`^was [\\d.]+.${unit}\\n`), label);
    assert.notEqual(number(now), number(was), label);
  }
  await counts(page.page.getByRole('region', { name: 'Scald' }).getByText(/^was /), 2, 'and in its card');
});

/// The sheet of a figure, opened by a tap on it.
async function openSheet(page, label) {
  await page.keyFigure(label).click();
  await page.opened();
  const more = page.dialog.getByRole('button', { name: 'Half a point more' });
  await more.waitFor();
  return { more, less: page.dialog.getByRole('button', { name: 'Half a point less' }), box: page.dialog.getByRole('textbox') };
}

test('two taps try half a point more water: water is poured, no milk; what follows is said; a third tap keeps it', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const before = number((await value(page, 'True hydration')).value);
  const sheet = await openSheet(page, 'True hydration');
  await sheet.more.click();
  await drawn(page.page);
  assert.ok(Math.abs(number((await value(page, 'True hydration')).value) - before - 0.5) <= 0.06);
  await holds(milk(page), '112', 'the milk stays');
  // Half a point of 480 g of flour is 2.4 g.
  await page.dialog.getByText(/Water in final dough, 0.g → 2\.4.g/).waitFor();
  for (const [name, unit] of [['Dough', 'g'], ['Dough temperature', '°C'], ['Bulk rise', 'min']]) {
    const row = page.dialog.locator('.consequences > div').filter({ has: page.page.getByText(name, { exact: true }) });
    await until(() => row.locator('dd').first().innerText(), (text) => text.includes(unit), name);
  }
  const tinted = page.page.locator('.line.changed');
  await counts(tinted, 1, 'only the new water is tinted');
  await page.dialog.getByRole('button', { name: 'Keep', exact: true }).click();
  await page.dialog.waitFor({ state: 'hidden' });
  await counts(page.trial, 0);
  await holds(page.weight('Final dough', 'Water'), '2.4');
  await page.undo();
  await counts(page.line('Final dough', 'Water'), 0, 'undo');
});

test('another ingredient makes up the difference only when it is chosen, and dropped nothing has changed', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const kept = await all(page.page);
  const before = number((await value(page, 'True hydration')).value);
  const sheet = await openSheet(page, 'True hydration');
  await sheet.less.click();
  await page.dialog.getByText(/less than nothing/).waitFor();
  await holds(milk(page), '112', 'without water there is none to take out');
  await page.dialog.getByText('Whole milk', { exact: true }).click();
  await sheet.less.click();
  await drawn(page.page);
  assert.ok(Math.abs(number((await value(page, 'True hydration')).value) - before + 0.5) <= 0.06);
  assert.notEqual(await milk(page).inputValue(), '112');
  await sheet.box.click();
  await drawn(page.page);
  await page.page.keyboard.type('66');
  await drawn(page.page);
  assert.equal(number((await value(page, 'True hydration')).value), 66);
  await page.dialog.getByRole('button', { name: 'Drop', exact: true }).click();
  await page.dialog.waitFor({ state: 'hidden' });
  await counts(page.trial, 0);
  await holds(milk(page), '112');
  assert.deepEqual(await keptForGood(page.page), kept);
});

test('a button that is held runs on, and what is tried outlasts the sheet as a trial', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const before = number((await value(page, 'Salt')).value);
  const sheet = await openSheet(page, 'Salt');
  await sheet.more.hover();
  await page.page.mouse.down();
  await until(async () => number((await value(page, 'Salt')).value), (now) => now >= before + 1.4, 'three steps');
  await page.page.mouse.up();
  const now = (await value(page, 'Salt')).value;
  await page.page.waitForTimeout(600);
  assert.equal((await value(page, 'Salt')).value, now, 'let go, it stops');
  await page.page.keyboard.press('Escape');
  await page.trial.getByText(/Salt in final dough/).waitFor();
  // The end of the page can be reached above the bar.
  await page.page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await drawn(page.page);
  const [last, bar] = [await page.page.locator('main .answer').last().boundingBox(), await page.trial.boundingBox()];
  assert.ok(last.y + last.height <= bar.y + 1, `${last.y + last.height} above ${bar.y}`);
});
