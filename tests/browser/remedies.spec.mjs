//! Heat: the box beside the advice that names it, and the ice that is weighed by itself.

import assert from 'node:assert/strict';
import { Formula } from './pages/formula.mjs';
import { HeatPage } from './pages/heat.mjs';
import { Shelf } from './pages/shelf.mjs';
import { until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// Heat with a formula and a kitchen of one temperature.
async function inRoom(session, name, room) {
  const { page } = await session.open('phone');
  await (await new Shelf(new Formula(page)).open()).pick(name);
  const heat = await new HeatPage(page).open();
  await heat.box('Room').fill(room);
  await page.getByRole('textbox', { name: /^Flour(?! at)/ }).fill(room);
  await heat.box('Tap').fill('26');
  return { page, heat };
}

test('the flour is warmed in the box beside the advice, and emptied it is the kitchen\'s', async (session) => {
  const { page, heat } = await inRoom(session, 'Toast loaf for the class', '16');
  const dough = () => heat.degrees('Dough temperature');
  const before = await dough();
  const flour = heat.card('The dough this morning').getByRole('textbox', { name: 'Flour at' });
  assert.equal(await flour.inputValue(), '16');
  await flour.fill('40');
  const warm = await until(dough, (degrees) => degrees > before + 3, 'the dough follows its flour');
  assert.ok(warm > before);
  await flour.fill('');
  await flour.blur();
  await until(dough, (degrees) => Math.abs(degrees - before) < 0.11, 'it is the kitchen\'s again');
  assert.equal(await page.getByRole('textbox', { name: /^Flour(?! at)/ }).inputValue(), '16');
});

test('in a hot kitchen ice has a button of its own, and leaves the formula\'s water', async (session) => {
  const { page, heat } = await inRoom(session, 'Toast loaf for the class', '34');
  await heat.box('Target dough temperature').fill('20');
  const ice = heat.card('The dough this morning').getByRole('button', { name: /^Put in \d.* of the water as ice$/ });
  await ice.first().waitFor();
  const before = await heat.degrees('Dough temperature');
  await ice.first().click();
  await until(() => heat.degrees('Dough temperature'), (degrees) => degrees < before - 0.4, 'the ice melts in the dough');
  await new Formula(page).go('Formula');
  const iced = page.getByRole('textbox', { name: 'Ice, weight' });
  await iced.waitFor();
  assert.ok(Number.parseFloat(await iced.inputValue()) > 0, 'it is a line of the formula');
});
