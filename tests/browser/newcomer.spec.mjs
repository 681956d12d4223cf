//! A first visit: the worked example stands there whole, follows every change, and shows how each figure came about.

import assert from 'node:assert/strict';
import { Formula } from './pages/formula.mjs';
import { drawn, until } from './pages/whole.mjs';
import { test } from './promises.mjs';

/// The example's weights in grams, as the class has them; the first ones of each stream are its flours.
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

test('the first visit opens on a worked example with every figure there', async (desk) => {
  const page = new Formula((await desk.open('phone')).page);
  assert.equal(await page.name(), 'Lantern Lane chocolate loaf');
  assert.deepEqual(await page.streams(),
    ['Scald', 'Night dough', 'Final dough', 'Inside each ball', 'Chocolate and water']);
  const figures = await page.keyFigures();
  assert.equal(figures.length, 3);
  for (const { value, label } of figures) assert.match(value, /^[\d.,]+\s?(%|g)$/, label);
  close(number(await valueOf(page, 'Dough')), DOUGH, 0.5, 'dough');
  close(number(await valueOf(page, 'Salt')), (100 * 8.6) / FLOUR, 0.05, 'salt');
  for (const box of await page.page.getByRole('main').getByRole('textbox').all()) {
    assert.notEqual(await box.inputValue(), '', await box.getAttribute('id'));
  }
  for (const [stream, lines] of Object.entries(EXAMPLE)) {
    for (const [food, grams] of Object.entries(lines)) {
      assert.equal(number(await page.weight(stream, food).inputValue()), grams);
      const share = await page.percent(stream, food).inputValue();
      close(number(share), (100 * grams) / FLOUR, 0.05, `${food} in ${stream}`);
    }
  }
  assert.equal(await page.canUndo(), false, 'nothing has been changed yet');
  await page.saysNothingWrong();
});

test('one changed weight moves its percentage and every figure by the next frame', async (desk) => {
  const page = new Formula((await desk.open('phone')).page);
  const before = await page.keyFigures();
  await page.type(page.weight('Final dough', 'Whole milk'), '160');
  close(number(await page.percent('Final dough', 'Whole milk').inputValue()), (100 * 160) / FLOUR, 0.05, 'milk');
  close(number(await valueOf(page, 'Dough')), DOUGH + 48, 0.5, 'dough');
  // Whole milk is 87 to 88 parts of water in a hundred (composition tables), so 48 g bring about 42.
  const water = number(await valueOf(page, 'True water')) - number(before.find((one) => one.label === 'True water').value);
  close(water, (100 * 48 * 0.876) / FLOUR, 0.3, 'more true water');
  assert.equal(await valueOf(page, 'Salt'), before.find((one) => one.label === 'Salt').value, 'no more flour, so the salt stays');
});

test('a changed percentage moves the weight, whichever way a number is typed', async (desk) => {
  const page = new Formula((await desk.open('phone')).page);
  for (const [typed, percent] of [['30', 30], ['12,5', 12.5], ['7.25 %', 7.25], ['½', 0.5]]) {
    await page.type(page.percent('Final dough', 'White sugar'), typed);
    close(number(await page.weight('Final dough', 'White sugar').inputValue()), (percent * FLOUR) / 100, 0.05, typed);
    assert.equal(await page.percent('Final dough', 'White sugar').inputValue(), typed, 'the text stays as typed');
  }
});

test('a figure opens to its working: rule, numbers put in, source, and the figure itself', async (desk) => {
  const page = new Formula((await desk.open('phone')).page);
  for (const label of ['True water', 'Dough', 'Salt']) {
    const value = await valueOf(page, label);
    await page.keyFigure(label).click();
    await page.dialog.waitFor();
    await until(() => page.page.evaluate(() => document.activeElement.textContent), (focused) => focused === label, 'focus');
    const steps = page.dialog.getByRole('listitem');
    await steps.first().waitFor();
    for (const step of await steps.all()) assert.match(await step.innerText(), /=[\s\S]*Source: \S/);
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
