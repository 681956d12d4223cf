//! A bake of a copy that came with a link: after a reload, on another page and once the copy is kept, it goes on.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { ready } from './launch.mjs';
import { Formula } from './pages/formula.mjs';
import { DayPage } from './pages/day.mjs';
import { Share } from './pages/share.mjs';
import { all } from './pages/storage.mjs';
import { counts, drawn, is, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const [SAMPLE] = readFileSync(new URL('../sheet/samples/v1.links.txt', import.meta.url), 'utf8').split('\n');
const NAME = 'Frozen sample';
const at = (link) => `#loaf=${link}`;

/// A visitor who has begun to bake: two steps are done, a timer runs.
async function baking(session) {
  const { page, address } = await session.open('phone', { at: at(SAMPLE), timezoneId: 'Europe/London', locale: 'en-GB' });
  await page.clock.install({ time: new Date('2026-03-27T17:00:00Z') });
  await page.reload();
  await ready(page);
  const day = await new DayPage(page).open();
  await day.start();
  for (let steps = 0; steps < 12 && (await day.timers.getByRole('listitem').count()) === 0; steps += 1) await day.next();
  await day.timers.waitFor();
  return { page, day, address, step: await day.at(), timers: await day.timersSay() };
}

const told = (page) => new Formula(page).notice(`A bake is under way: ${NAME}`);
const goOn = (page) => page.getByRole('button', { name: 'Go on with it', exact: true });

/// Minutes and seconds that a timer has left: "Bulk rise 12:05 left" is 12.08.
const left = (said) => said.map((words) => {
  const [, hours, minutes] = words.match(/(?:(\d+) h )?(\d+)(?::\d\d| min) left/) ?? [words, 0, 0];
  return Number(hours ?? 0) * 60 + Number(minutes);
});

test('a visitor with a bake under way is told of it after a reload, and goes on at the same step with the timers that ran', async (session) => {
  const { page, day, step, timers } = await baking(session);
  await page.clock.fastForward('02:00');
  const link = new URL(page.url()).hash;
  await page.reload();
  await ready(page);
  await told(page).waitFor();
  assert.ok((await told(page).innerText()).includes(','), 'the step is named');
  await goOn(page).click();
  await day.bench.waitFor();
  await is(() => day.at(), step, 'the step it was left at');
  const now = left(await day.timersSay());
  for (const [number, before] of left(timers).entries()) {
    assert.ok(Math.abs(before - 2 - now[number]) <= 1, `${timers}, two minutes later ${now}`);
  }
  assert.equal(new URL(page.url()).hash, link, 'the copy still lives in the address');
  await day.leave();
  await counts(told(page), 0, 'who was at the bench need not be told');
});

test('a visitor who comes back without the link goes on with the copy that is being baked', async (session) => {
  const { page, day, address, step } = await baking(session);
  await page.goto(`${address}?later`);
  await ready(page);
  const app = new Formula(page);
  assert.equal(await app.name(), 'Lantern Lane chocolate loaf');
  await told(page).waitFor();
  await goOn(page).click();
  await day.bench.waitFor();
  await is(() => day.at(), step);
  await day.leave();
  assert.equal(await app.name(), NAME);
  await until(() => new URL(page.url()).hash, (hash) => hash.startsWith('#loaf='), 'the copy is in the address again');
});

test('the bake of a copy is none of another copy, and is reached from there', async (session) => {
  const { page, day, address, step } = await baking(session);
  const app = new Formula(page);
  await day.leave();
  // Another formula, handed over by a link of its own.
  await page.goto(`${address}?other`);
  await ready(page);
  const link = await (await new Share(app).open()).link();
  await page.goto(`${address}?visit${new URL(link).hash}`);
  await ready(page);
  await app.notice(`A bake is under way: ${NAME}`).waitFor();
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await page.getByRole('button', { name: 'Keep it', exact: true }).waitFor();
  await app.go('Day');
  await page.getByText(`A bake of “${NAME}” is under way.`).waitFor();
  await counts(page.getByRole('button', { name: 'Back to the bench' }), 0);
  await page.getByRole('button', { name: 'Open its formula and go to the bench' }).click();
  await day.bench.waitFor();
  await is(() => day.at(), step);
});

test('a copy that is kept while it is baked takes its bake along, and a bake that is over leaves nothing behind', async (session) => {
  const { page, day, step } = await baking(session);
  await day.leave();
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  await page.getByRole('button', { name: 'Back to the bench' }).waitFor();
  await until(() => all(page), (stored) => !('softcrumb.bench_copy' in stored), 'the copy is a formula now');
  await page.reload();
  await ready(page);
  await day.bench.waitFor();
  await is(() => day.at(), step);
  await day.stop();
  const stored = Object.keys(await all(page)).filter((key) => key.startsWith('softcrumb.bench'));
  assert.deepEqual(stored, []);
  await drawn(page);
});
