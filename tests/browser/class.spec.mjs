//! The lower half of Batch: tins with their plan, shopping, nutrition, allergens, the class.

import assert from 'node:assert/strict';
import { axe, ready, shot } from './launch.mjs';
import { BatchPage, plain, row, unfold, whole } from './pages/batch.mjs';
import { DayPage } from './pages/day.mjs';
import { counts, is, isInvalid, reads, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

async function opened(session, screen = 'phone', options) {
  const { page } = await session.open(screen, options);
  const batch = await new BatchPage(page).open();
  await tin(page).waitFor();
  return { page, batch };
}

const tin = (page) => row(page, 'Tin');
const text = async (part) => plain(await part.innerText());
/// What is on the shopping list, each line with its box to tick.
const bought = (page) => page.getByRole('listitem').filter({ has: page.getByRole('checkbox') });

/// 9.5 cm deep, 31 × 13 at the rim, 30 × 12 at the bottom: 9.5/6·(403 + 360 + 61·25) = 3622.7 cm³; at
/// 3.9 cm³/g 929 g.
test('the example’s tin tells its room, its dough and how the pieces lie', async (session) => {
  const { page } = await opened(session);
  for (const told of [/3\.62 l/, /929 g/, /2 by 5 pieces/]) await reads(tin(page), told);
  // The drawing is hidden from roles, because the sentence below it tells the same.
  await counts(tin(page).locator('svg .put-in'), 10);
  await tin(page).getByRole('button', { name: /Dough that suits/ }).click();
  await reads(page.getByRole('dialog'), /n × V \/ r/);
});

test('a small tin is too full, and one tap makes the batch right for it', async (session) => {
  const { page, batch } = await opened(session);
  await page.getByRole('textbox', { name: /^Depth/ }).fill('5');
  const advice = page.getByRole('region', { name: 'The tin and the dough' });
  await reads(advice, /too much dough.*Take [\d.]+ g out/s);
  await page.getByRole('button', { name: 'Make the batch for these tins' }).click();
  await advice.waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Undo' }).click();
  await advice.waitFor();
  await page.getByRole('textbox', { name: /^Depth/ }).fill('-3');
  await isInvalid(page.getByRole('textbox', { name: /^Depth/ }));
  assert.ok(await batch.key('Dough to mix'));
});

test('a tin of mine is kept, and the dough is carried over to it', async (session) => {
  const { page, batch } = await opened(session);
  const before = await batch.key('Dough to mix');
  await page.getByRole('button', { name: 'Save tin' }).click();
  await page.getByRole('combobox', { name: 'Baked in' }).selectOption({ label: 'Round tin' });
  await page.getByRole('combobox', { name: /Scale the dough/ }).selectOption({ index: 1 });
  await page.getByRole('textbox', { name: /^Length at the rim/ }).waitFor();
  await until(() => batch.key('Dough to mix'), (now) => now !== before, 'the dough grew with the tin');
  await page.reload();
  await ready(page);
  await unfold(page, 'Tin');
  await page.getByRole('button', { name: 'Remove from my tins' }).waitFor();
});

test('a price in the pantry gives the cost, and both are there after a reload', async (session) => {
  const { page } = await opened(session);
  await unfold(page, 'Shopping and cost');
  await page.getByRole('textbox', { name: /^One pack holds/ }).fill('2000');
  await page.getByRole('textbox', { name: /^One pack costs/ }).fill('24.5');
  await page.getByRole('textbox', { name: 'Currency' }).fill('kr');
  const first = bought(page).first();
  await reads(first, /466 g.*1 pack of 2000 g, 1534 g left over.*5\.71 kr/s);
  await page.reload();
  await ready(page);
  await unfold(page, 'Shopping and cost');
  await reads(first, /5\.71 kr/);
});

test('nutrition is a table by either law, each row opening to its working', async (session) => {
  const { page } = await opened(session);
  await unfold(page, 'Nutrition, an estimate');
  const table = page.getByRole('table').first();
  await reads(table, /Energy.*kJ \/ \d+ kcal.*of which saturates.*Salt/s);
  await page.getByRole('radio', { name: 'United States' }).check();
  await reads(table, /Total fat.*Sodium.*mg/s);
  await page.getByRole('button', { name: 'Protein' }).click();
  await reads(page.getByRole('dialog'), /100 × \(S × k \+ T\) \/ B/);
});

test('allergens are told with who says so, and what the kitchen adds', async (session) => {
  const { page } = await opened(session);
  const card = row(page, 'Allergens');
  await reads(card, /Contains wheat \(gluten\)/);
  await card.getByRole('combobox', { name: 'Traces from your kitchen' }).selectOption({ label: 'Hazelnuts' });
  await reads(card, /May contain hazelnuts\..*Hazelnuts: your kitchen/s);
  await card.getByRole('button', { name: 'Remove Hazelnuts' }).click();
  await until(() => text(card), (told) => !/May contain|: your kitchen/.test(told), 'it is taken away');
});

/// Twelve students and the teacher: 13 loaves, six at a time: 5, 4 and 4.
test('a class of twelve is told bench by bench and load by load', async (session) => {
  const { page, batch } = await opened(session);
  await unfold(page, 'Class');
  const card = page.getByRole('main').getByRole('group').filter({ has: page.getByText('Class', { exact: true }) });
  await reads(card, /12 students at 12 benches, 13 loaves/);
  await reads(card, /Load 1: loaves 1 to 5, in at 0 min, out at \d+ min/);
  await reads(card, /Begin each load’s dough \d+ min after the one before/);
  await page.getByRole('textbox', { name: /^At one bench/ }).fill('2');
  await reads(card, /12 students at 6 benches/);
  await page.getByRole('button', { name: 'Set the batch for the whole class' }).click();
  // A loaf is the batch's own.
  await is(() => batch.key('Pieces'), '130 × 91.9 g');
});

/// 13 loaves, six at a time: three loads; each dough and each bake begins as much later than the one before.
test('the class’s oven loads become steps of the plan, each in its turn', async (session) => {
  const { page } = await opened(session);
  await unfold(page, 'Class');
  await page.getByRole('button', { name: 'Plan the day with these oven loads' }).click();
  await page.getByRole('heading', { level: 1, name: 'Day' }).waitFor({ state: 'attached' });
  const day = new DayPage(page);
  await day.openRows();
  const steps = await until(() => day.listed(), (all) => all.some((step) => step.name === 'Load 3: bake in its turn'), 'three loads');
  const begins = (name) => {
    const found = steps.find((step) => step.name === name);
    assert.ok(found, `${name} is among: ${steps.map((step) => step.name).join('; ')}`);
    const [hours, minutes] = found.clock.split(':').map(Number);
    return 60 * hours + minutes;
  };
  const bakes = ['Bake', 'Load 2: bake in its turn', 'Load 3: bake in its turn'].map(begins);
  assert.equal(bakes[2] - bakes[1], bakes[1] - bakes[0]);
  const doughs = ['Load 2: dough from the bowl to the oven', 'Load 3: dough from the bowl to the oven'].map(begins);
  assert.equal(doughs[1] - doughs[0], bakes[1] - bakes[0]);
  await reads(page.getByRole('main'), /3 loads, \d+ min apart/);
  await shot(page, 'day-loads-phone');
  await page.getByRole('radio', { name: 'are shaped together' }).check();
  const names = async () => (await day.listed()).map((step) => step.name);
  await until(names, (all) => all.includes('Load 3: proof in its turn') && !all.some((name) => name.includes('dough from the bowl')), 'shaped together');
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
});

/// One oven place for thirteen loaves: more steps than a plan may have, which is said.
test('more loads than a plan can hold are answered in words', async (session) => {
  const { page } = await opened(session);
  await new DayPage(page).open();
  await page.getByRole('textbox', { name: /^Oven loads/ }).fill('40');
  await reads(page.getByRole('main'), /No plan can be made/);
  await page.getByRole('textbox', { name: /^Oven loads/ }).fill('2');
  await page.getByRole('region', { name: 'Steps' }).getByText('Load 2: proof in its turn').waitFor();
});

test('a price, a tin and a class follow from one tab to the other', async (session) => {
  const { page, context } = { ...(await opened(session)), context: session.visits[0].context };
  const other = await context.newPage();
  await other.goto(session.address);
  await ready(other);
  await new BatchPage(other).open();
  for (const one of [page, other]) await unfold(one, 'Shopping and cost');
  await page.getByRole('textbox', { name: /^One pack holds/ }).fill('2000');
  await page.getByRole('textbox', { name: /^One pack costs/ }).fill('24.5');
  await bought(other).first().getByText(/5\.71/).waitFor();
  await page.getByRole('button', { name: 'Save tin' }).click();
  await other.getByRole('button', { name: 'Remove from my tins' }).waitFor();
  for (const one of [page, other]) await unfold(one, 'Class');
  await page.getByRole('textbox', { name: /^Students in the room/ }).fill('9');
  await other.getByText(/^9\s+students at 9\s+benches/).first().waitFor();
});

for (const screen of ['phone', 'wide']) {
  for (const colorScheme of ['light', 'dark']) {
    test(`the lower half of Batch is open to all (${screen}, ${colorScheme})`, async (session) => {
      const { page } = await opened(session, screen, { colorScheme });
      for (const title of ['Shopping and cost', 'Nutrition, an estimate', 'Class']) await unfold(page, title);
      await whole(page);
      assert.deepEqual(await axe(page), []);
      assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
      await shot(page, `class-${screen}-${colorScheme}`);
    });
  }
}

test('the lower half of Batch fits 320 px', async (session) => {
  const { page } = await opened(session, 'phone', { viewport: { width: 320, height: 640 } });
  for (const title of ['Shopping and cost', 'Nutrition, an estimate', 'Class']) await unfold(page, title);
  assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
});
