//! The bench through both days by the clock: each step on one screen, waiting beside work, and a way back.

import { Formula } from './pages/formula.mjs';
import assert from 'node:assert/strict';
import { BatchPage, plain } from './pages/batch.mjs';
import { DayPage, onFriday } from './pages/day.mjs';
import { drawn, is, reads, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// What a screen says, and whether it fits.
const seen = (page) => page.evaluate(() => {
  const bottom = document.querySelector('.bench-buttons').getBoundingClientRect().top;
  const rows = [...document.querySelectorAll('.to-weigh li')].map((row) => row.getBoundingClientRect().bottom);
  return {
    heading: document.querySelector('.one-step h2').textContent.replaceAll('\u00a0', ' '),
    said: document.querySelector('.one-step').innerText.replaceAll('\u00a0', ' '),
    high: document.documentElement.scrollHeight,
    fits: rows.every((row) => row <= bottom + 1),
    rows: rows.length,
  };
});

/// So long until the time that a screen waits for.
async function untilThen(page, heading) {
  const found = /^Nothing to do until (?:\w{3} )?(\d+):(\d\d)/.exec(heading);
  if (!found) return null;
  return page.evaluate(([hour, minute]) => {
    const then = new Date();
    then.setHours(hour, minute, 40, 0);
    if (then <= new Date()) then.setDate(then.getDate() + 1);
    return then - new Date();
  }, [Number(found[1]), Number(found[2])]);
}

/// Follows the bench by the clock, as a baker does whose hands take three minutes for everything.
async function follow(page, see) {
  const { done } = new DayPage(page);
  for (let screens = 0; screens < 60; screens += 1) {
    await drawn(page);
    const screen = await seen(page);
    await see(screen);
    if (/^All done/.test(screen.heading) || /Then cut it/.test(screen.said)) return;
    const wait = await untilThen(page, screen.heading);
    await page.clock.fastForward(wait ?? 3 * 60_000);
    await drawn(page);
    if (wait === null) await done.click();
    else await until(async () => (await seen(page)).heading, (now) => now !== screen.heading, 'what was waited for is due');
  }
  assert.fail('the bake does not end');
}

test('two days: each step fits the screen with all its weights, and a tap does it', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  const told = [];
  await follow(page, (screen) => {
    told.push(screen);
    assert.ok(screen.high <= 640, `${screen.heading}: ${screen.high} px`);
    assert.ok(screen.fits, `${screen.heading}: its weights are on the screen`);
  });
  const work = told.filter(({ heading }) => !/^Nothing to do/.test(heading));
  assert.ok(work.length + 2 <= 25, `${work.length} taps, one to start and one to finish`);
  const at = (heading) => plain(told.find((screen) => screen.heading === heading).said);
  assert.match(at('Make Scald'), /Pour 112 g of boiling water over both flours/);
  assert.match(at('Weigh and mix the dough'), /Scald, all of it\s*179 g.*Night dough, all of it\s*219 g/s);
  assert.match(at('Fill and shape'), /8(\.\d)? g of dark chocolate inside each of the 10 pieces/);
  assert.match(at('Heat the oven up'), /180 °C, top and bottom heat/);
  assert.match(at('Set in the tin'), /rows \d, in each \d/);
  assert.match(at('Cool'), /\d\d to \d\d °C in the middle.*Cut it from Sat 1[567]:\d\d on/s);
  // Nothing that is due tomorrow begins tonight.
  const night = told.find(({ heading }) => /until Sat 7:\d\d/.test(heading));
  assert.match(night.said, /Then: Weigh and mix the dough/);
  await page.getByRole('button', { name: 'Finish and save to the log' }).click();
  const kept = page.getByRole('region', { name: 'Saved to the log' });
  await reads(kept, /predicted.*happened.*next bake.*Bulk rise.*Proof.*Bake/s);
  await kept.getByRole('button', { name: 'To the plan' }).click();
  // The next plan begins from now: nothing of it is late.
  assert.equal(await page.getByText('Conflicts').count(), 0);
  await reads(day.log, /Lantern Lane chocolate loaf.*Sat 28 March/s);
}, { seconds: 240 });

test('one step and nothing else: no head, no bar of places, from its top, with the focus on it', async (session) => {
  const { page, day } = await onFriday(session);
  await day.log.scrollIntoViewIfNeeded();
  await day.start();
  await drawn(page);
  assert.equal(await page.evaluate(() => scrollY), 0);
  await until(() => page.evaluate(() => document.activeElement.id), (id) => id === 'bench-step', 'the focus is on the step');
  assert.equal(await page.getByRole('banner').isVisible(), false);
  assert.equal(await page.getByRole('navigation', { name: 'Places' }).isVisible(), false);
  for (const button of await page.locator('.bench-buttons button').all()) assert.ok((await button.boundingBox()).height >= 56);
  await day.leave();
  assert.ok(await page.getByRole('navigation', { name: 'Places' }).isVisible());
});

test('Back undoes Done: the step is there again, what began with it has not begun', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Mix Night dough');
  await day.next();
  const done = await until(() => day.timersSay(), (said) => said.length === 1, 'it stands in the room');
  assert.match(done[0], /^Let Night dough stand/);
  await day.back();
  await is(() => day.at(), 'Mix Night dough');
  await until(() => day.timersSay(), (said) => said.length === 0, 'it does not stand yet');
  await day.next();
  await day.goTo('Night dough in the fridge');
  await day.next();
  // What is due later has not begun, and its Back leads to what was done last.
  await until(() => day.at(), (at) => /^Nothing to do until/.test(plain(at)), 'there is nothing to do');
  await page.reload();
  await day.bench.waitFor();
  await day.back();
  await is(() => day.at(), 'Night dough in the fridge', 'also after a reload');
});

/// 667 = 1 × 75 + 8 × 74, by definition.
test('the dough on the scale is divided at the bench', async (session) => {
  const { page, day } = await onFriday(session);
  const batch = await new BatchPage(page).open();
  await batch.ask('Pieces');
  await batch.box('Pieces').fill('9');
  await new DayPage(page).open();
  await day.start();
  await day.goTo('Weigh and divide');
  await page.getByLabel(/^Dough on the bench/).fill('667');
  await until(async () => plain(await day.bench.innerText()), (said) => /Divide it into 9 pieces: 1 of 75 g, 8 of 74 g\./.test(said), 'the pieces add up');
});

test('the bowl is as deep at the bench as on Heat', async (session) => {
  const { page, day } = await onFriday(session);
  await new Formula(page).go('Heat');
  const way = page.getByRole('region', { name: 'Cooling' }).locator('strong').first();
  const heat = await until(async () => plain(await way.innerText()), (said) => /deep/.test(said), 'the way of cooling');
  await day.open();
  await day.start();
  await day.goTo('Let Scald cool');
  await until(async () => plain(await day.bench.innerText()), (said) => said.includes(heat), `the bench says ${heat}`);
});

test('yeast below the scale is said with its way out, as on Batch', async (session) => {
  const { page, day } = await onFriday(session);
  const batch = await new BatchPage(page).open();
  await batch.ask('Multiply by');
  await batch.box('Multiply by').fill('0.5');
  const { shows } = await batch.line('Night dough', 'Instant yeast');
  assert.match(shows, /below the scale/);
  await new DayPage(page).open();
  await day.start();
  await day.goTo('Mix Night dough');
  const said = plain(await day.bench.innerText());
  assert.match(said, /Instant yeast\s*below the scale/);
  assert.match(said, /pocket scale|stir .* of yeast into/i);
});

test('a dough mixed so late that it keeps its baker up is told at the bench', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Weigh and mix the dough');
  await page.clock.fastForward('03:00:00');
  await until(async () => plain(await day.bench.innerText()), (said) => /would begin (Fri 23|Sat [01]):\d\d, while you sleep until 6:30/.test(said), 'the night is told');
});
