//! At the bench: a deviation from the plan is shown at once and corrected with one tap; timers ring on every place.

import assert from 'node:assert/strict';
import { axe, breaches, ready, shot } from './launch.mjs';
import { plain } from './pages/batch.mjs';
import { Formula } from './pages/formula.mjs';
import { onFriday } from './pages/day.mjs';
import { counts, drawn, holds, is, isInvalid, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// Runs in the page before it opens: notes each shake.
const noteShakes = () => {
  window.shaken = 0;
  Object.defineProperty(navigator, 'vibrate', { value: () => { window.shaken += 1; return true; } });
};

const step = async (day) => plain(await day.bench.innerText());

test('a timer rings in whatever place the user is, also after a reload there', async (session) => {
  const { page, day } = await onFriday(session, 'phone', { before: noteShakes });
  await day.start();
  await day.goTo('Let Scald cool');
  await day.next();
  await day.leave();
  const formula = new Formula(page);
  await formula.go('Formula');
  // The alarms load with the chunk of Day, after the page.
  const bells = page.waitForRequest(/split_day/);
  await page.reload();
  await ready(page);
  await counts(page.getByRole('heading', { level: 1, name: 'Formula' }), 1, 'it opens where it was left');
  await bells;
  await page.clock.fastForward('20:00');
  const alert = page.getByRole('alert').filter({ hasText: 'The time is up: Let Scald cool.' });
  await alert.waitFor();
  assert.ok((await page.evaluate(() => window.shaken)) >= 1);
  await alert.getByRole('link', { name: 'To the bench' }).click();
  await is(() => day.at(), 'Scald in the fridge', 'what it was set for is due');
  await alert.waitFor({ state: 'detached' });
});

test('the step that became due by the clock stays until it is done', async (session) => {
  const { page, day } = await onFriday(session, 'phone');
  await day.start();
  await day.goTo('Let Scald cool');
  await day.next();
  await page.clock.fastForward('20:00');
  await is(() => day.at(), 'Scald in the fridge', 'it is due');
  await page.clock.fastForward('02:00:00');
  await is(() => day.at(), 'Scald in the fridge', 'it has not been done');
});

test('what rings timers is not loaded where none runs', async (session) => {
  const { page } = await session.open('phone');
  const loaded = () => page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => name.includes('split_')));
  await page.reload();
  await ready(page);
  await page.waitForLoadState('networkidle');
  assert.ok((await loaded()).every((name) => !name.includes('split_day')), (await loaded()).join());
});

test('a dough off the mixer too cold: a longer rise, or a warmer place with one tap', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Weigh and mix the dough');
  await day.otherwise();
  await page.getByLabel(/Dough temperature/).fill('9');
  const told = await until(() => step(day), (said) => /bulk rise takes/.test(said), 'the rise is told');
  assert.match(told, /at 9 °C instead of \d+(\.\d)? °C: it rises later.*The bulk rise takes [\dhmin ]+ instead of [\dhmin ]+\./s);
  await shot(page, 'bench-made-up-phone');
  await page.getByRole('button', { name: /Put it in a warmer place, \d+.°C/ }).click();
  await until(() => step(day), (said) => /It is put where it is \d+ °C/.test(said), 'the place is taken');
  await page.reload();
  await ready(page);
  await until(() => step(day), (said) => /It is put where it is \d+ °C/.test(said), 'and is there after a reload');
  await page.getByRole('button', { name: 'Leave it where it usually stands' }).click();
  await page.getByRole('button', { name: /Put it in a warmer place/ }).waitFor();
  assert.deepEqual(await breaches(page), []);
});

test('a paste that is not cold enough must wait, and its timer is set with one tap', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Let Scald cool');
  const box = page.getByLabel(/^Scald is at/);
  await box.fill('70');
  const told = await until(() => step(day), (said) => /It needs about .* more/.test(said), 'it is told to wait');
  assert.match(told, /Scald is at 70 °C; the plan has it at \d+(\.\d)? °C by now/);
  await box.fill('3');
  await until(() => step(day), (said) => /it can go on/.test(said), 'cold enough');
  await box.fill('99999');
  await isInvalid(box);
  await box.fill('70');
  // The way that was chosen for it is in ice water already.
  await page.getByRole('button', { name: /^Wait .* more/ }).click();
  await until(() => day.timersSay(), (said) => said.some((one) => /^Let Scald cool .*left/.test(one)), 'the timer runs');
});

test('a bake that runs late says what gives way, and one tap moves the table', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await page.clock.fastForward('20:00:00');
  await day.otherwise();
  const told = await until(() => step(day), (said) => /late\./.test(said), 'it is said to be late');
  assert.match(told, /This was to begin at \d+:\d\d: it is .* late\./);
  const later = page.getByRole('button', { name: /Have the bread ready later/ });
  await later.click();
  await until(() => step(day), (said) => /The bread can be cut \w+ \d+:\d\d instead of Sat 16:00/.test(said), 'the table moved');
  await page.getByText('Conflicts').waitFor({ state: 'detached' });
  await shot(page, 'bench-late-phone');
});

test('when a step really began can be put right, and the plan follows', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Let Scald cool');
  await day.next();
  await day.otherwise();
  const box = page.getByLabel('Started at');
  await holds(box, '17:00');
  await box.fill('16:55');
  await box.dispatchEvent('change');
  await until(() => day.timersSay(), (said) => said.some((one) => /^Let Scald cool 1[45]:\d\d left/.test(one)), 'its timer moves with it');
  await page.reload();
  await ready(page);
  await day.otherwise();
  await holds(box, '16:55');
});

test('a bake of another formula keeps its bench, and is found again', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.next();
  const first = await day.at();
  await day.leave();
  const formula = new Formula(page);
  await page.getByRole('button', { name: 'Shelf', exact: true }).click();
  await formula.dialog.getByRole('button', { name: /Rye scald loaf/ }).first().click();
  await formula.dialog.waitFor({ state: 'hidden' });
  await page.getByText(/A bake of “Lantern Lane chocolate loaf” is under way/).waitFor();
  await until(() => day.listed(), (steps) => steps.length > 5, 'the plan of the other formula stands');
  await page.getByRole('button', { name: 'Open its formula and go to the bench' }).click();
  await day.bench.waitFor();
  await is(() => day.at(), first);
});

test('a trial of more yeast shows old beside new in the head, and the known rises stay those of their dough', async (session) => {
  const { page, day } = await onFriday(session);
  const before = await until(() => day.keys(), (keys) => keys['Bulk rise']?.value, 'the figures stand');
  assert.deepEqual(Object.keys(before), ['Start Fri', 'Bulk rise', 'Ready Sat']);
  assert.ok(Object.values(before).every(({ was }) => was === ''));
  const formula = new Formula(page);
  await formula.go('Formula');
  await formula.tryOut();
  await formula.type(formula.weight('Final dough', 'Instant yeast'), '7.4');
  await formula.go('Day');
  const tried = await until(() => day.keys(), (keys) => keys['Bulk rise']?.was, 'old beside new');
  const minutes = (said) => {
    const [, hours = '0', over] = /^(?:(\d+):)?(\d+)/.exec(said);
    return Number(hours) * 60 + Number(over);
  };
  assert.ok(minutes(tried['Bulk rise'].value) < minutes(before['Bulk rise'].value), JSON.stringify(tried));
  assert.equal(tried['Bulk rise'].was, `was ${before['Bulk rise'].value}`);
  await shot(page, 'day-trial-phone');
  await page.getByRole('button', { name: 'Keep', exact: true }).click();
  const card = day.card('Rise');
  await until(async () => plain(await card.innerText()), (said) => /1\.\d+ times as fast/.test(said), 'kept, the dough is still another');
  await page.getByRole('button', { name: 'The known rises are of this dough' }).click();
  await until(async () => plain(await card.innerText()), (said) => !/times as fast/.test(said), 'now they are its own');
  assert.equal((await day.keys())['Bulk rise'].was, '');
});

for (const [screen, colorScheme] of [['phone', 'light'], ['phone', 'dark'], ['wide', 'light'], ['wide', 'dark']]) {
  test(`the bench can be read and used by everyone (${screen}, ${colorScheme})`, async (session) => {
    const { page, day } = await onFriday(session, screen, { colorScheme });
    await shot(page, `plan-${screen}-${colorScheme}`);
    await day.start();
    await day.goTo('Weigh and mix the dough');
    await day.otherwise();
    await page.getByLabel(/Dough temperature/).fill('22');
    await drawn(page);
    await shot(page, `bench-${screen}-${colorScheme}`);
    // The screen is so tall that the two fixed buttons cover nothing.
    const height = await page.evaluate(() => document.documentElement.scrollHeight);
    await page.setViewportSize({ width: page.viewportSize().width, height: height + 400 });
    await drawn(page);
    assert.deepEqual(await axe(page), []);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    assert.ok(wide <= 0, `${wide} px too wide`);
  });
}

test('Done and Back stay in reach at the bench on a phone held sideways', async (session) => {
  const { page, day } = await onFriday(session, 'phone', { viewport: { width: 640, height: 360 } });
  await day.start();
  await day.goTo('Weigh and mix the dough');
  for (const name of ['Back', 'Done']) {
    const { y, height } = await page.getByRole('button', { name, exact: true }).boundingBox();
    assert.ok(y >= 0 && y + height <= 360.5 && height >= 44, `${name}: ${y} to ${y + height}`);
  }
});
