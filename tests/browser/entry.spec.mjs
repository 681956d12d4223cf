//! How numbers are entered on a phone: a tap selects, Enter goes on, and keys end where a paste does.

import assert from 'node:assert/strict';
import { Formula } from './pages/formula.mjs';
import { drawn, holds, isInvalid } from './pages/app_page.mjs';
import { test } from './registry.mjs';

test('a tap on a number selects it: what is typed then takes its place', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const box = formula.weight('Final dough', 'White sugar');
  await box.tap();
  await drawn(page);
  await page.keyboard.type('60');
  await holds(box, '60');
  await holds(formula.percent('Final dough', 'White sugar'), '12.5');
});

test('Enter goes to the next weight, over the end of a part too', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  await formula.weight('Scald', 'Medium rye flour').tap();
  await page.keyboard.press('Enter');
  await drawn(page);
  assert.ok(await formula.weight('Scald', 'Water').evaluate((box) => box === document.activeElement));
  await page.keyboard.press('Enter');
  await drawn(page);
  await page.keyboard.type('150');
  await holds(formula.weight('Night dough', 'Strong white bread flour'), '150', 'over the end of a part');
});

/// Every figure of the formula as its boxes have it.
const figuresOf = (page) => page.evaluate(() => [...document.querySelectorAll('main .line input')].map((box) => `${box.id} ${box.value}`));

for (const [what, name, typed] of [['share', /flour in this part/i, '0.5'], ['share', /flour in this part/i, '12.5'], 
  ['liquid', /Hydration of this part/, '0.9'], ['liquid', /Hydration of this part/, '140']]) {
  test(`a ${what} of ${typed} typed key by key ends where it does when it is pasted, as one step`, async (session) => {
    const seen = [];
    for (const how of ['typed', 'pasted']) {
      const { page } = await session.open('phone');
      const formula = new Formula(page);
      const before = await figuresOf(page);
      await formula.part('Scald').locator('.settings').click();
      const box = formula.part('Scald').getByRole('textbox', { name });
      await box.click();
      await drawn(page);
      if (how === 'typed') await page.keyboard.type(typed);
      else await page.keyboard.insertText(typed);
      await drawn(page);
      await holds(box, typed);
      seen.push(await figuresOf(page));
      await formula.undo();
      assert.deepEqual(await figuresOf(page), before, `${how}: one step back`);
      assert.equal(await formula.canUndo(), false, `${how}: and no other`);
    }
    assert.deepEqual(seen[0], seen[1]);
  });
}

test('two entries into one box are two steps', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const salt = formula.weight('Final dough', 'Salt');
  for (const [grams, next] of [['9', 'White sugar'], ['10', 'Whole milk']]) {
    await salt.tap();
    await drawn(page);
    await page.keyboard.type(grams);
    await formula.weight('Final dough', next).tap();
  }
  await formula.undo();
  await holds(salt, '9');
  await formula.undo();
  await holds(salt, '8.6');
});

test('a liquid that the final dough cannot give is refused, and the keys before it leave nothing behind', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const before = await figuresOf(page);
  await formula.part('Scald').locator('.settings').click();
  const box = formula.part('Scald').getByRole('textbox', { name: /Hydration of this part/ });
  await box.click();
  await drawn(page);
  // 200 % of 72 g is 144 g, 32 g more than there is, and the final dough has no water.
  await page.keyboard.type('200');
  await isInvalid(box);
  assert.deepEqual(await figuresOf(page), before);
  assert.equal(await formula.canUndo(), false);
});
