//! Day: the plan from both ends, the bench through a whole bake, timers, the log, the calendar file.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { breaches, cached, ready } from './launch.mjs';
import { onFriday } from './pages/day.mjs';
import { counts, drawn, holds, is, reads, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

for (const screen of ['phone', 'wide']) {
  test(`a plan for tomorrow afternoon stands ready, with no work at night (${screen})`, async (session) => {
    const { page, day } = await onFriday(session, screen);
    await holds(day.table, '2026-03-28T16:00');
    const steps = await until(() => day.listed(), (all) => all.at(-1).name === 'Cool', 'the plan stands');
    for (const { clock, name, said, waits } of steps) {
      const [hour, minute] = clock.split(':').map(Number);
      const awake = hour * 60 + minute >= 390 && hour < 23;
      assert.ok(awake || waits, `${name} at ${clock}: ${said}`);
    }
    await counts(page.getByText('Conflicts'), 0);
    await reads(day.card('When'), /Ready Sat 16:00; start Fri /);
    await reads(day.card('Two days'), /Ready to cut Sat .*, between .* and /);
    assert.deepEqual(await breaches(page), []);
  });
}

/// The night from Saturday to Sunday has no hour from one to two.
test('a plan for Sunday keeps its times by the clock on the wall, across the change of clocks', async (session) => {
  const { day } = await onFriday(session);
  await day.table.fill('2026-03-29T16:00');
  await day.table.dispatchEvent('change');
  const steps = await until(() => day.listed(), (steps) => /Sun 29/.test(steps.at(-1).day), 'the plan moves to Sunday');
  const chilled = steps.find(({ name }) => name === 'Night dough in the fridge');
  const out = steps.find(({ name }) => /mix the dough/.test(name));
  const minutes = (clock) => clock.split(':').map(Number).reduce((hour, minute) => hour * 60 + minute);
  const byWall = minutes(out.clock) + 1440 - minutes(chilled.clock);
  const [, hours, , over = '0'] = /^(\d+) h( (\d+) min)?/.exec(chilled.said);
  assert.equal(byWall, Number(hours) * 60 + Number(over) + 60, 'an hour more on the wall than in the fridge');
});

test('a table that is too soon is told, and one tap puts it right', async (session) => {
  const { page, day } = await onFriday(session);
  await day.table.fill('2026-03-27T22:00');
  await day.table.dispatchEvent('change');
  await page.getByText('Conflicts').waitFor();
  await page.getByRole('button', { name: /bread ready later/ }).click();
  await page.getByText('Conflicts').waitFor({ state: 'detached' });
  await page.reload();
  await ready(page);
  await day.openRows();
  await until(() => day.table.inputValue(), (text) => text.startsWith('2026-03-28T'), 'it is kept');
});

test('a whole bake at the bench, with a reload in the middle, offline, is kept in the log', async (session) => {
  const { context, page, day } = await onFriday(session);
  await cached(page);
  await context.setOffline(true);
  await day.start();
  await day.goTo('Mix Night dough');
  const first = await day.at();
  await page.getByRole('checkbox', { name: /flour/i }).first().check();
  await day.next();
  await until(() => day.at(), (now) => now !== first, 'the next step');
  await day.goTo('Weigh and mix the dough');
  await page.getByRole('checkbox', { name: 'Scald, all of it' }).check();
  await day.otherwise();
  await page.getByLabel(/Dough temperature/).fill('9');
  await page.getByText(/at 9.°C instead of \d+(\.\d)?.°C: it rises later/).waitFor();
  const where = await day.at();
  await page.reload();
  await ready(page);
  await is(() => day.at(), where, 'the bench is as it was');
  assert.ok(await page.getByRole('checkbox', { name: 'Scald, all of it' }).isChecked());
  await day.otherwise();
  await holds(page.getByLabel(/Dough temperature/), '9');
  await day.goTo('Weigh and divide');
  await page.getByLabel(/Dough on the bench/).fill('915');
  await day.goTo('Cool');
  await page.getByLabel(/Bread out of the oven/).fill('975');
  await page.getByLabel(/Middle of the bread/).fill('80');
  const raw = page.getByText(/^80.°C is below 8\d.°C: the middle is not done\. Put it back into the oven/);
  await raw.waitFor();
  await page.getByLabel(/Middle of the bread/).fill('92');
  await raw.waitFor({ state: 'detached' });
  await page.getByRole('radio', { name: 'Golden brown' }).check();
  await day.next();
  await page.getByRole('button', { name: 'Finish and save to the log' }).click();
  const kept = page.getByRole('region', { name: 'Saved to the log' });
  await reads(kept, /Dough temperature.*9 °C/s);
  await kept.getByRole('button', { name: 'To the plan' }).click();
  await counts(page.getByText('Conflicts'), 0);
  await day.openRows();
  await day.bakes.locator('summary').first().click();
  await reads(day.log, /Dough at 9 °C.*lost in the oven 11\.5 %.*True hydration.*Bread out of the oven 975 g.*92 °C.*golden brown/s);
  await page.reload();
  await ready(page);
  await day.openRows();
  await until(() => day.bakes.count(), (count) => count === 1, 'the bake is still in the log');
});

test('an actual weight tells at once what it does to the water, and how to make up for it', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Make Scald');
  const box = await day.really('Water');
  await box.fill('104');
  await page.getByText(/Water is 8.g short\./).waitFor();
  await page.getByRole('button', { name: /^Add 8.g of Water/ }).click();
  await page.getByText(/Water is 8.g short\./).waitFor({ state: 'detached' });
  await box.fill('120');
  await page.getByText(/Water is 8.g over\..*True hydration is/).waitFor();
  await page.getByRole('button', { name: /^Add [\d.]+.g more of .*flour/i }).click();
  await page.getByText(/True hydration is/).waitFor({ state: 'detached' });
});

test('two timers outlast a reload, and are told when they are over', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Let Scald cool');
  await day.next();
  const before = await until(() => day.timersSay(), (said) => said.length === 2, 'two timers');
  assert.ok(before.every((said) => /left/.test(said)), before.join());
  await page.clock.fastForward('05:00');
  await page.reload();
  await ready(page);
  await until(() => day.timersSay(), (said) => said.length === 2, 'both are there again');
  await page.clock.fastForward('20:00');
  await is(() => day.at(), 'Scald in the fridge', 'the shorter is over');
});

test('a device that refuses notices, sound, shaking and a waking screen still bakes', async (session) => {
  const { page, day } = await onFriday(session, 'phone', {
    before: () => {
      for (const name of ['Notification', 'AudioContext']) delete window[name];
      Object.defineProperty(navigator, 'wakeLock', { value: { request: () => Promise.reject(new Error('no')) } });
      Object.defineProperty(navigator, 'vibrate', { value: undefined });
    },
  });
  await day.start();
  await day.goTo('Let Scald cool');
  await day.next();
  await page.clock.fastForward('30:00');
  await is(() => day.at(), 'Scald in the fridge', 'it is over');
  await day.next();
  assert.ok(await day.at());
});

test('the calendar file holds every step at its time', async (session) => {
  const { page, day } = await onFriday(session);
  const steps = await day.listed();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a calendar file' }).click();
  const file = await coming;
  assert.match(file.suggestedFilename(), /Lantern.Lane.*\.ics$/i);
  const text = (await readFile(await file.path(), 'utf8')).replaceAll('\r\n ', '');
  const events = text.split('BEGIN:VEVENT').slice(1);
  assert.equal(events.length, steps.length);
  for (const { clock, name } of steps) {
    const own = events.filter((event) => event.includes(`SUMMARY:${name.replaceAll(',', '\\,')}\r\n`));
    const times = own.map((event) => /DTSTART:(\d{8}T\d{6})Z/.exec(event)[1]);
    // March before the change: the wall shows UTC. The list rounds to the minute.
    const near = times.map((time) => {
      const [hour, minute, second] = [time.slice(9, 11), time.slice(11, 13), time.slice(13, 15)].map(Number);
      const rounded = hour * 60 + minute + (second >= 30 ? 1 : 0);
      return `${Math.floor(rounded / 60) % 24}:${String(rounded % 60).padStart(2, '0')}`;
    });
    assert.ok(near.includes(clock), `${name} at ${clock}, not ${near.join()}`);
  }
});

test('a step is lengthened, left out and added, and the usual steps come back', async (session) => {
  const { page, day } = await onFriday(session);
  const step = (name) => day.steps.getByRole('listitem').filter({ has: page.getByText(name, { exact: true }) });
  await step('Bench rest').locator('summary').click();
  await step('Bench rest').getByLabel(/^Lasts/).fill('25');
  await until(() => day.listed(), (steps) => steps.some(({ name, said }) => name === 'Bench rest' && /25 min/.test(said)), 'it lasts 25 min');
  await step('Bench rest').getByLabel('A step of your own after it').fill('Boil the kettle');
  await step('Bench rest').getByRole('button', { name: 'Add it' }).click();
  await step('Boil the kettle').waitFor();
  await step('Pre-shape').locator('summary').click();
  await step('Pre-shape').getByRole('button', { name: 'Leave out' }).click();
  await step('Pre-shape').waitFor({ state: 'detached' });
  await page.reload();
  await ready(page);
  await day.openRows();
  await step('Boil the kettle').waitFor();
  await page.getByRole('button', { name: 'Back to the usual steps' }).click();
  await step('Pre-shape').waitFor();
  await drawn(page);
});
