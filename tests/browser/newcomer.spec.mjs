//! A first visit: the worked example is complete, follows every change, and shows the working of each figure.

import assert from 'node:assert/strict';
import { ready, SCREENS } from './launch.mjs';
import { Formula } from './pages/formula.mjs';
import { counts, drawn, holds, reads, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// The example's weights in grams, as the class has them; the first ones of each part are its flours.
const EXAMPLE = {
  Scald: { 'Strong white bread flour': 58, 'Medium rye flour': 14, Water: 112 },
  'Night dough': { 'Strong white bread flour': 144, Water: 74, 'Instant yeast': 0.6 },
};
const FLOUR = 58 + 14 + 144 + 264;
const DOUGH = FLOUR + 112 + 74 + 0.6 + 112 + 34 + 53 + 43 + 14 + 8.6 + 3.4;

const number = (text) => Number(text.replace(/,(?=\d{3})/g, '').match(/-?[\d.]+/)[0]);
const close = (one, other, by, what) => assert.ok(Math.abs(one - other) <= by, `${what}: ${one} is not ${other} ± ${by}`);

async function valueOf(page, label) {
  return (await page.keyFigures()).find((figure) => figure.label === label).value;
}

test('the first visit opens on a worked example with every figure there', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  assert.equal(await page.name(), 'Lantern Lane chocolate loaf');
  assert.deepEqual(await page.parts(),
    ['Scald', 'Night dough', 'Final dough', 'Inside each ball', 'Chocolate and water']);
  const figures = await page.keyFigures();
  assert.equal(figures.length, 3);
  for (const { value, label } of figures) assert.match(value, /^[\d.,]+\s?(%|g)$/, label);
  close(number(await valueOf(page, 'Dough')), DOUGH, 0.5, 'dough');
  close(number(await valueOf(page, 'Salt')), (100 * 8.6) / FLOUR, 0.05, 'salt');
  for (const box of await page.page.getByRole('main').getByRole('textbox').all()) {
    assert.notEqual(await box.inputValue(), '', await box.getAttribute('id'));
  }
  for (const [part, lines] of Object.entries(EXAMPLE)) {
    for (const [food, grams] of Object.entries(lines)) {
      assert.equal(number(await page.weight(part, food).inputValue()), grams);
      const share = await page.percent(part, food).inputValue();
      close(number(share), (100 * grams) / FLOUR, 0.05, `${food} in ${part}`);
    }
  }
  assert.equal(await page.canUndo(), false, 'nothing has been changed yet');
  await page.saysNothingWrong();
});

test('one changed weight moves its percentage and every figure by the next frame', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  const before = await page.keyFigures();
  await page.type(page.weight('Final dough', 'Whole milk'), '160');
  close(number(await page.percent('Final dough', 'Whole milk').inputValue()), (100 * 160) / FLOUR, 0.05, 'milk');
  close(number(await valueOf(page, 'Dough')), DOUGH + 48, 0.5, 'dough');
  // Whole milk is 87 to 88 parts of water in a hundred (composition tables), so 48 g bring about 42.
  const water = number(await valueOf(page, 'True hydration')) - number(before.find((one) => one.label === 'True hydration').value);
  close(water, (100 * 48 * 0.876) / FLOUR, 0.3, 'more true water');
  assert.equal(await valueOf(page, 'Salt'), before.find((one) => one.label === 'Salt').value, 'no more flour, so the salt stays');
});

/// Runs in the page: types a weight into the first box, then reads the page in the frame it is typed for and in the one after.
async function typeAndRead(weight) {
  const frame = () => new Promise((done) => requestAnimationFrame(done));
  const read = (part) => [...document.querySelectorAll(`${part} :is(input, .figure, .ledger svg, .advice, .follows)`)]
    .map((one) => `${one.id} ${one.value ?? one.ariaLabel ?? ''} ${one.textContent}`);
  const box = document.querySelector('main .line input');
  box.focus();
  await frame();
  await frame();
  const [far, near] = ['main .cards.rows', 'main .card.dough-part:first-child'];
  const before = read(far);
  box.value = weight;
  box.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await frame();
  const first = { keys: read('.keys'), near: read(near) };
  await frame();
  // The content at the start of the third frame was drawn in the second.
  await frame();
  const second = { keys: read('.keys'), near: read(near), far: read(far), all: read('main') };
  return { before, first, second };
}

test('what is on the screen follows a weight in the next frame, all that is off it in the frame after', async (session) => {
  const { page } = await session.open('phone');
  await new Formula(page).rows();
  // Until the browser has looked where each card stands.
  await drawn(page);
  for (const weight of ['77', '58,5', '120']) {
    const { before, first, second } = await page.evaluate(typeAndRead, weight);
    assert.ok(before.length > 15, 'the figures below are there');
    assert.deepEqual(first, { keys: second.keys, near: second.near }, 'what is on the screen waits for no other frame');
    assert.notDeepEqual(second.far, before, 'the figures below have followed');
    const words = (all) => all.map((one) => one.replace('58,5', '58.5'));
    await page.reload();
    await ready(page);
    await new Formula(page).rows();
    const { second: anew } = await page.evaluate(typeAndRead, weight);
    assert.deepEqual(words(second.all), words(anew.all), 'and are those of the page opened anew');
  }
});

test('a box off the screen keeps what is typed into it, and everything follows', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  await page.rows();
  const box = page.weight('Chocolate and water', 'Water');
  await page.page.evaluate(() => scrollTo(0, 0));
  await drawn(page.page);
  const percent = page.percent('Chocolate and water', 'Water');
  const before = await percent.inputValue();
  await box.evaluate((box) => {
    box.value = '31,50';
    box.dispatchEvent(new InputEvent('input', { bubbles: true }));
  });
  await until(() => percent.inputValue(), (text) => text !== before, 'its percentage follows');
  await holds(box, '31,50', 'the text stays as typed');
  await page.page.reload();
  await ready(page.page);
  await holds(box, '31.5', 'and is kept');
});

// What the cards need: their chunk, the script that loads chunks, their style, the small chunks.
for (const file of ['split_formula', 'chunks\\.', 'later\\.', 'small_soon']) {
  test(`cards below the parts whose ${file.replace('\\.', '')} does not come are said in words, and one tap asks for them again`, async (session) => {
    // A first visit: who has stored something needs the scripts before anything is drawn.
    const context = await session.browser.newContext({ ...SCREENS.phone, serviceWorkers: 'block' });
    let lost = true;
    await context.route(new RegExp(file), (asked) => (lost ? asked.abort() : asked.continue()));
    const page = await context.newPage();
    await page.goto(session.address);
    await ready(page);
    const formula = new Formula(page);
    const again = page.getByRole('main').getByRole('button', { name: 'Try again' });
    await page.getByRole('main').getByRole('alert').getByText('could not be loaded').waitFor();
    await formula.type(formula.weight('Final dough', 'Whole milk'), '160');
    close(number(await valueOf(formula, 'Dough')), DOUGH + 48, 0.5, 'what is there works without them');
    lost = false;
    await again.click();
    await formula.openRow('Baker’s percentages');
    await formula.figure('Scalded flour').first().waitFor();
    await counts(again, 0);
    await context.close();
  });
}

test('a changed percentage moves the weight, whichever way a number is typed', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  for (const [typed, percent] of [['30', 30], ['12,5', 12.5], ['7.25 %', 7.25], ['½', 0.5]]) {
    await page.type(page.percent('Final dough', 'White sugar'), typed);
    close(number(await page.weight('Final dough', 'White sugar').inputValue()), (percent * FLOUR) / 100, 0.05, typed);
    await holds(page.percent('Final dough', 'White sugar'), typed, 'the text stays as typed');
  }
});

test('a figure opens to its working: rule, numbers put in, source, and the figure itself', async (session) => {
  const page = new Formula((await session.open('phone')).page);
  for (const label of ['True hydration', 'Dough', 'Salt']) {
    const value = await valueOf(page, label);
    await page.keyFigure(label).click();
    await page.dialog.waitFor();
    await until(() => page.page.evaluate(() => document.activeElement.textContent), (focused) => focused === label, 'focus');
    await page.opened();
    const working = page.dialog.locator('summary').filter({ hasText: 'How this is worked out' });
    if (await working.count() > 0) await working.click();
    const steps = page.dialog.getByRole('listitem');
    await steps.first().waitFor();
    for (const step of await steps.all()) await reads(step, /=[\s\S]*Source: \S/);
    // A weight is followed by what it is of the flour, so the figure need not be the last.
    const sums = (await steps.allInnerTexts()).map((step) => number(step.split('=').at(-1)));
    assert.ok(sums.some((sum) => Math.abs(sum - number(value)) <= 0.051), `${label} ${value}: ${sums}`);
    await page.saysNothingWrong();
    await page.page.keyboard.press('Escape');
    await page.dialog.waitFor({ state: 'hidden' });
    await drawn(page.page);
    assert.ok(await page.keyFigure(label).evaluate((button) => button === document.activeElement), 'the focus is back');
  }
});
