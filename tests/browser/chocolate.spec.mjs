//! Chocolate: syrup and filling are set from either figure, seizing is announced, and no weight is lost.

import assert from 'node:assert/strict';
import { axe, shot } from './launch.mjs';
import { whole } from './pages/batch.mjs';
import { ChocolatePage } from './pages/chocolate.mjs';
import { holds, reads, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const SCREENS = ['phone', 'wide'];

async function open(session, screen = 'phone', options) {
  const { page } = await session.open(screen, options);
  return { page, chocolate: await new ChocolatePage(page).open() };
}

for (const screen of SCREENS) {
  test(`a syrup set by its thickness takes its liquid, and the other way round (${screen})`, async (session) => {
    const { page, chocolate } = await open(session, screen);
    const liquid = chocolate.box('Water, weight');
    const before = Number(await liquid.inputValue());
    const thickness = Number(await chocolate.box('Thickness').inputValue());
    await chocolate.box('Thickness').fill(String(thickness / 2));
    await until(async () => Number(await liquid.inputValue()), (more) => more > before, `more than ${before} g thins it`);
    await liquid.fill(String(before));
    await until(async () => Number(await chocolate.box('Thickness').inputValue()), (seen) => seen === thickness, 'and back');
    await chocolate.box('Chocolate : liquid').fill('2');
    await holds(liquid, '32', 'half of the 64 g of chocolate');
    await shot(page, `chocolate-${screen}`);
  });
}

test('what the syrup should do pours its liquid', async (session) => {
  const { page, chocolate } = await open(session);
  await page.getByRole('radio', { name: 'Dip or brush' }).check();
  await until(async () => Number(await chocolate.box('Thickness').inputValue()), (thickness) => thickness >= 0.06 && thickness < 0.15, 'it dips');
  await reads(chocolate.card('Will it run?'), /coats what is dipped or brushed/);
});

test('too little liquid is told as seizing, with how much it takes', async (session) => {
  const { chocolate } = await open(session);
  await chocolate.box('Water, weight').fill('4');
  const advice = await reads(chocolate.card('It seizes'), /Pour at least [\d.]+ g/);
  await reads(chocolate.card('Will it run?'), /It seizes below [\d.]+ g of liquid, and [\d.]+ g is missing/);
  const least = Number(advice.match(/at least ([\d.]+)/)[1]);
  await chocolate.box('Water, weight').fill(String(least + 1));
  await chocolate.card('It seizes').waitFor({ state: 'detached' });
});

test('the filling is set in each piece, in all or as a share, and undone', async (session) => {
  const { page, chocolate } = await open(session);
  await chocolate.box('In each piece').fill('8');
  const total = async () => Number(await chocolate.box('To make in all').inputValue());
  await until(total, (grams) => Math.abs(grams - 80 / 0.93) < 0.01, '10 pieces of 8 g, 7 % staying behind');
  await chocolate.box('In each piece').fill('20');
  await chocolate.card('Much filling').waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await chocolate.card('Much filling').waitFor({ state: 'detached' });
});

test('a formula with no syrup is offered one, in one step that can be undone', async (session) => {
  const { page, chocolate } = await open(session);
  await page.getByRole('link', { name: 'Formula' }).click();
  await page.getByRole('heading', { name: 'Chocolate and water' }).getByRole('button').click();
  await page.getByRole('dialog').getByRole('button', { name: /Remove/ }).click();
  await chocolate.open();
  await page.getByRole('button', { name: 'Add a syrup' }).click();
  await chocolate.open();
  await until(async () => Number(await chocolate.box('Thickness').inputValue()), (thickness) => thickness >= 0.15 && thickness < 1, 'it drizzles');
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Add a syrup' }).waitFor();
});

test('the curve is told in words too, and its words do not touch', async (session) => {
  const { page, chocolate } = await open(session);
  for (const grams of ['2', '9', '14', '18', '30', '60', '300']) {
    await chocolate.box('Water, weight').fill(grams);
    const picture = page.getByRole('img', { name: /of liquid to 100 g of chocolate/ });
    const touching = await picture.evaluate((svg) => {
      const words = [...svg.querySelectorAll('text')].map((one) => ({ text: one.textContent, box: one.getBoundingClientRect() }));
      const touch = (a, b) => a.left < b.right && b.left < a.right && a.top + 2 < b.bottom && b.top + 2 < a.bottom;
      return words.flatMap((one, index) => words.slice(index + 1).filter((other) => touch(one.box, other.box)).map((other) => `${one.text} / ${other.text}`));
    });
    assert.deepEqual(touching, [], `with ${grams} g`);
  }
});

for (const screen of SCREENS) {
  for (const colorScheme of ['light', 'dark']) {
    test(`Chocolate is open to all and nothing hangs over the edge (${screen}, ${colorScheme})`, async (session) => {
      const { page } = await open(session, screen, { colorScheme });
      await whole(page);
      assert.deepEqual(await axe(page), []);
      assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
      await shot(page, `chocolate-${screen}-${colorScheme}`);
    });
  }
}

test('Chocolate fits 320 px', async (session) => {
  const { page } = await open(session, 'phone', { viewport: { width: 320, height: 640 } });
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
});
