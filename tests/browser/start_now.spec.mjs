//! A bake that begins before its time: what the bench says of the bread, one time of it everywhere, and no live start without a dough.

import assert from 'node:assert/strict';
import { plain } from './pages/batch.mjs';
import { onFriday } from './pages/day.mjs';
import { Formula } from './pages/formula.mjs';
import { Shelf } from './pages/shelf.mjs';
import { counts, is, reads, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// Saturday at nine, with a loaf that has no night: the plan is for Sunday at four.
async function onSaturday(session) {
  const { page, day } = await onFriday(session);
  const formula = new Formula(page);
  await formula.go('Formula');
  await (await new Shelf(formula).open()).pick('Toast loaf for the class');
  await page.clock.fastForward('16:00:00');
  await day.open();
  await until(async () => (await day.keys())['Ready Sun']?.value, (at) => at === '16:00', 'it is for Sunday');
  return { page, day };
}

test('a loaf without a night, begun now: ready as soon as it can be, told before and the same everywhere', async (session) => {
  const { page, day } = await onSaturday(session);
  await day.start();
  await reads(day.bench, /Nothing to do until Sun \d+:\d\d/);
  await reads(day.bench, /Started now, the bread is ready Sat 1\d:\d\d, \d+ h.* earlier\./);
  assert.doesNotMatch(await day.bench.innerText(), /see the plan/);
  await day.next();
  for (let steps = 0; steps < 6 && !/^Nothing to do/.test(await day.at()); steps += 1) {
    await page.clock.fastForward('10:00');
    await day.next();
  }
  assert.match(await day.at(), /^Nothing to do until 1[01]:\d\d$/, 'the dough is divided when it has risen');
  const said = plain(await day.bench.innerText());
  assert.doesNotMatch(said, /Conflicts|too long|while you sleep/);
  const [, ready] = /The bread can be cut Sat (\d+:\d\d) instead of Sun 16:00, between/.exec(said);
  assert.doesNotMatch(said, /Ready to cut/, 'said once');
  await day.leave();
  assert.equal((await day.keys())['Ready Sat'].value, ready);
  await reads(page.getByRole('region', { name: 'One day' }), new RegExp(`Ready to cut Sat ${ready}`));
  await reads(page.getByRole('region', { name: 'When', exact: true }), new RegExp(`Ready Sat ${ready}`));
});

test('what the dough was expected at stays what was planned, whatever is measured', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Work the butter in');
  const [, expected] = /Expected dough temperature: ([\d.]+)/.exec(plain(await day.bench.innerText()));
  for (const measured of ['27', '24']) {
    await page.getByLabel(/^Dough temperature/).fill(measured);
    await reads(day.bench, new RegExp(`The dough is at ${measured}.°C instead of ${expected}.°C`));
  }
});

test('what is not ready has no button that goes on by itself, and says what is against it', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Work the butter in');
  await day.done.click();
  const primary = page.locator('.bench-buttons .primary');
  await counts(primary, 0, 'the dough has not risen');
  const [, hour, minute] = /Not before (\d+):(\d\d)/.exec(plain(await page.locator('.bench-buttons').innerText()));
  await day.notReady.click();
  await reads(day.bench, new RegExp(`It rises until ${hour}:${minute} at the soonest`));
  await reads(day.bench, /Started now, the bread is ready/);
  const early = day.bench.getByRole('button', { name: 'Start it early' });
  await until(() => early.boundingBox(), ({ y, height }) => y + height < 580, 'what has opened is on the screen');
  const waits = await day.at();
  await early.click();
  await is(() => day.at(), 'Weigh and divide', 'begun all the same');
  await day.back();
  await is(() => day.at(), waits, 'it is waited for again');
  // At the soonest time the button is there.
  await page.evaluate(([at, past]) => {
    const then = new Date();
    then.setHours(at, past, 40, 0);
    return then - new Date();
  }, [Number(hour), Number(minute)]).then((wait) => page.clock.fastForward(wait));
  await primary.waitFor();
  await is(() => primary.innerText(), 'Start it now', 'it may be up');
});

test('a bench that was only looked at is no bake, also after a reload', async (session) => {
  const { page, day } = await onFriday(session);
  const start = page.getByRole('button', { name: 'Start at the bench' });
  await day.start();
  await day.leave();
  await start.waitFor();
  await page.reload();
  await start.waitFor();
  await day.start();
  await day.next();
  await day.leave();
  await page.getByRole('button', { name: 'Back to the bench' }).waitFor();
});

test('a formula without a dough has no plan and no start at the bench', async (session) => {
  const { page, day } = await onFriday(session);
  const formula = new Formula(page);
  await formula.go('Formula');
  await new Shelf(formula).open();
  await page.getByRole('dialog').getByRole('button', { name: 'New formula' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  await day.open();
  await page.getByText('There is nothing to bake yet. Enter the ingredients of the dough in Formula.').first().waitFor();
  await counts(page.getByRole('button', { name: 'Start at the bench' }), 0, 'nothing to start');
});
