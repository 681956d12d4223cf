//! Labels of charts: each in its picture, none on another, on a phone and on a wide screen, in each language.

import assert from 'node:assert/strict';
import { ChocolatePage } from './pages/chocolate.mjs';
import { onFriday } from './pages/day.mjs';
import { HeatPage } from './pages/heat.mjs';
import { Formula } from './pages/formula.mjs';
import { drawn, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// Half a pixel of rounding is no overlap.
const HALF = 0.5;

/// In the page: what the texts of the charts do wrong, by their boxes on the screen.
function crowded([chart, half]) {
  const troubles = [];
  const pictures = document.querySelectorAll(chart);
  for (const svg of pictures) {
    const field = svg.getBoundingClientRect();
    const texts = [...svg.querySelectorAll('text')].filter((text) => text.textContent !== '');
    const boxes = texts.map((text) => ({ says: text.textContent, box: text.getBoundingClientRect() }));
    for (const [at, { says, box }] of boxes.entries()) {
      const isOut = box.left < field.left - half || box.right > field.right + half
        || box.top < field.top - half || box.bottom > field.bottom + half;
      if (isOut) troubles.push(`“${says}” leaves the picture`);
      for (const other of boxes.slice(at + 1)) {
        const wide = Math.min(box.right, other.box.right) - Math.max(box.left, other.box.left);
        const high = Math.min(box.bottom, other.box.bottom) - Math.max(box.top, other.box.top);
        if (wide > half && high > half) troubles.push(`“${says}” and “${other.says}” overlap by ${wide.toFixed(1)} × ${high.toFixed(1)}`);
      }
    }
  }
  return { count: pictures.length, troubles };
}

async function isTidy(page, what, chart = '.flow svg') {
  await drawn(page);
  const { count, troubles } = await page.evaluate(crowded, [chart, HALF]);
  assert.ok(count > 0, `${what}: there is a chart`);
  assert.deepEqual(troubles, [], what);
}

const LOCALES = ['en-GB', 'es-ES', 'ja-JP'];

/// Goes to a place by its link, whatever the language, and opens its rows.
async function go(page, fragment) {
  await page.locator(`nav a[href="#${fragment}"]`).click();
  await page.locator('main .answer').first().waitFor();
  await drawn(page);
  await new Formula(page).openRows();
}

for (const screen of ['phone', 'wide']) {
  test(`the limits of cooling and the words of the syrup keep apart in each language (${screen})`, async (session) => {
    for (const locale of LOCALES) {
      const { page } = await session.open(screen, { locale });
      for (const place of ['heat', 'chocolate', 'day']) {
        await go(page, place);
        await page.locator(place === 'day' ? '.ribbon svg' : '.flow svg').first().waitFor();
        await isTidy(page, `${place}, ${locale}`, '.flow svg, .ribbon svg');
      }
    }
  });
}

test('the limits of cooling keep apart, whichever rules hold and however it cools', async (session) => {
  const { page } = await session.open('phone');
  const heat = await new HeatPage(page).open();
  for (const { value, label } of await heat.rules().locator('option').evaluateAll((all) => all.map(({ value, label }) => ({ value, label })))) {
    await heat.rules().selectOption(value);
    await drawn(page);
    await isTidy(page, label);
  }
  for (const way of ['Dish', 'Tray', 'Jar', 'Flat bag']) {
    await page.getByRole('radio', { name: way, exact: true }).check();
    await drawn(page);
    await isTidy(page, way);
  }
});

test('the words of the syrup keep apart, from a few drops of water to a cup', async (session) => {
  const { page } = await session.open('phone');
  const chocolate = await new ChocolatePage(page).open();
  const water = chocolate.box('Water, weight');
  for (const grams of ['0', '3', '6', '8', '12', '16', '18', '25', '32', '40', '60', '90', '400', '2500']) {
    await water.fill(grams);
    await drawn(page);
    await isTidy(page, `${grams} g of water`);
  }
});

test('the chart of two days marks midnight, and the night that it draws shorter', async (session) => {
  for (const screen of ['phone', 'wide']) {
    const { page } = await onFriday(session, screen);
    const ribbon = page.getByRole('group', { name: 'Chart of the plan' });
    const says = await until(() => ribbon.locator('text').allTextContents(), (all) => all.includes('0:00'), 'midnight has its tick');
    assert.equal(says.filter((words) => words === 'night, drawn shorter').length, 1, says.join());
    assert.ok(says.includes('Sat 28 March'), says.join());
    // The tick stands below the line of midnight, the words below the shade of the night.
    const [tick, line, words, shade] = await ribbon.evaluate((figure) => {
      const text = (wanted) => [...figure.querySelectorAll('text')].find((one) => one.textContent === wanted);
      const middle = (one) => { const { left, right } = one.getBoundingClientRect(); return (left + right) / 2; };
      return [text('0:00'), figure.querySelector('.midnight'), text('night, drawn shorter'), figure.querySelector('.night')].map(middle);
    });
    assert.ok(Math.abs(tick - line) <= 1, `${tick}, ${line}`);
    assert.ok(Math.abs(words - shade) <= 60, `${words}, ${shade}`);
    await isTidy(page, screen, '.ribbon svg');
    await page.getByLabel('No work while I sleep').uncheck();
    await until(() => ribbon.locator('text').allTextContents(), (all) => !all.includes('night, drawn shorter'), 'without a night nothing is shortened');
    await isTidy(page, `${screen}, no night`, '.ribbon svg');
  }
});
