//! What is noted at the bench is not lost, is told at once, and is in the log; what a tap does is told before it.

import assert from 'node:assert/strict';
import { breaches, ready } from './launch.mjs';
import { plain } from './pages/batch.mjs';
import { onFriday } from './pages/day.mjs';
import { Formula } from './pages/formula.mjs';
import { HeatPage } from './pages/heat.mjs';
import { all, put } from './pages/storage.mjs';
import { counts, drawn, holds, is, reads, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// A bake whose scald is weighed with 8 g of water too little.
async function shortOfWater(session) {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Make Scald');
  const box = await day.really('Water');
  await box.fill('104');
  await box.blur();
  await page.getByText(/Water is 8.g short\./).waitFor();
  return { page, day, box };
}

const water = (day) => day.bench.getByRole('checkbox', { name: 'Water' });

test('a weight that was typed is there again when it is ticked again, and one step back brings it too', async (session) => {
  const { page, day } = await shortOfWater(session);
  await water(day).uncheck();
  await page.getByText(/Water is 8.g short\./).waitFor({ state: 'detached' });
  await reads(day.bench, /Water\s+112 g → 104 g/);
  await page.reload();
  await ready(page);
  await water(day).check();
  await page.getByText(/Water is 8.g short\./).waitFor();
  await water(day).uncheck();
  await day.leave();
  await new Formula(page).undo();
  await page.getByRole('button', { name: 'Back to the bench' }).click();
  await page.getByText(/Water is 8.g short\./).waitFor();
  assert.ok(await water(day).isChecked());
});

test('a paste that did not get hot enough is told at its step, with what to do', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Make Scald');
  const box = day.bench.getByLabel(/^Scald is at/);
  await box.fill('56');
  await reads(day.bench, /Scald is at 56 °C; its starch cooks at 5\d to \d\d °C\. Put it on low heat and stir until it is at \d\d °C\./);
  await box.fill('75');
  await reads(day.bench, /Scald is at 75 °C: hot enough/);
  await day.next();
  await is(() => day.at(), 'Let Scald cool');
  await day.bench.getByLabel(/^Scald is at/).fill('56');
  await reads(day.bench, /its starch cooks at/);
  assert.deepEqual(await breaches(page), []);
});

test('what Heat advises for a paste that falls short has a button, and one step takes it back', async (session) => {
  const { page } = await session.open('phone');
  const heat = await new HeatPage(page).open();
  const degrees = () => heat.degrees('Paste');
  await heat.box('Lost from kettle to bowl').fill('28');
  const use = page.getByRole('button', { name: /^Use: (Warm the bowl|Pour)/ }).first();
  await use.waitFor();
  const short = await degrees();
  await use.click();
  await until(degrees, (now) => now >= short + 1, 'the paste is hotter');
  await new Formula(page).undo();
  await until(degrees, (now) => now === short, 'taken back');
});

test('the dough is measured on its step, and the step is one of as many as the plan has', async (session) => {
  const { page, day } = await onFriday(session);
  const said = plain(await day.steps.innerText());
  const [, count] = /(\d+) steps/.exec(said);
  const numbers = await day.steps.locator('.name[data-step]').evaluateAll((all) => all.map((one) => Number(one.dataset.step)));
  assert.deepEqual(numbers, numbers.map((_, at) => at + 1));
  assert.equal(numbers.length, Number(count));
  await day.start();
  await reads(page.locator('.bench-top'), new RegExp(`Step 1 of ${count}`));
  for (const step of ['Weigh and mix the dough', 'Work the butter in']) {
    await day.goTo(step);
    const box = page.getByLabel(/^Dough temperature/);
    assert.ok(await box.isVisible(), step);
  }
});

test('Start it now says what it does before it is tapped, and Back takes it back', async (session) => {
  const { page, day } = await onFriday(session);
  const now = page.getByRole('button', { name: 'Start it now' });
  await day.start();
  for (let steps = 0; steps < 20 && !(await now.isVisible()); steps += 1) await day.next();
  const waits = await day.at();
  await reads(day.bench, /Started now, the bread is ready \w+ \d+:\d\d/);
  await now.click();
  await until(() => day.at(), (at) => at !== waits, 'it is begun');
  await day.back();
  await is(() => day.at(), waits, 'it is waited for again');
  await now.click();
  await until(() => day.at(), (at) => at !== waits, 'it is begun again');
  await day.leave();
  await new Formula(page).undo();
  await page.getByRole('button', { name: 'Back to the bench' }).click();
  await is(() => day.at(), waits, 'one step back');
});

test('the log has the weights that were typed, and the date on which the bread went into the oven', async (session) => {
  const { page, day } = await shortOfWater(session);
  await day.stop();
  await day.openRows();
  await reads(day.log, /one bake, begun Fri 27 March/);
  await day.bakes.locator('summary').first().click();
  await reads(day.log, /Weighed: Water 104 g instead of 112 g\./);
  // A bake of last summer, when clocks were an hour ahead: begun in the evening, in the oven after midnight.
  const [key, text] = Object.entries(await all(page)).find(([key]) => key === 'softcrumb.log');
  const log = JSON.parse(text);
  const bake = structuredClone(log.bakes[0]);
  const at = (time) => Date.parse(time);
  Object.assign(bake, { id: 'summerbake', began_ms: at('2025-08-16T17:00:00Z') });
  bake.steps = [{ work: 'bake', of: 0, began_ms: at('2025-08-16T23:20:00Z'), ended_ms: at('2025-08-16T23:50:00Z') }];
  await put(page, key, JSON.stringify({ ...log, bakes: [bake] }));
  await page.reload();
  await ready(page);
  await day.openRows();
  await reads(day.bakes.first(), /baked Sun 17 August 2025/);
  await reads(day.log, /one bake, baked Sun 17 August/);
});

test('the boxes of a step hold what was typed after a reload', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Work the butter in');
  await page.getByLabel(/^Dough temperature/).fill('24');
  await drawn(page);
  await page.reload();
  await ready(page);
  await holds(page.getByLabel(/^Dough temperature/), '24');
  await counts(page.getByLabel(/^Mixed for/).filter({ visible: true }), 0, 'the mixing time is one tap away');
});
