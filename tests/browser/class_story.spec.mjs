//! The story of a class: a teacher plans and prints it, a student opens the code, bakes in an own tin, without a signal.

import assert from 'node:assert/strict';
import { axe, cached, ready, shot } from './launch.mjs';
import { read, withoutPrinter } from './decode.mjs';
import { BatchPage, plain, unfold, whole } from './pages/batch.mjs';
import { Share } from './pages/share.mjs';
import { AppPage, drawn, reads, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// What a printer leaves free.
const EDGES = { top: '10mm', bottom: '10mm', left: '10mm', right: '10mm' };
const NAME = 'Lantern Lane chocolate loaf';

/// A class of twelve in pairs: the teacher prints its sheet and shows the code on the screen.
async function teach(session) {
  const { page } = await session.open('wide', { before: withoutPrinter });
  await new BatchPage(page).open();
  await unfold(page, 'Class');
  await page.getByRole('textbox', { name: /^Students in the room/ }).fill('12');
  await page.getByRole('textbox', { name: /^At one bench/ }).fill('2');
  await reads(page.getByRole('main').getByRole('group').filter({ has: page.getByText('Class', { exact: true }) }), /12 students at 6 benches, 13 loaves/);
  const out = await new Share(new AppPage(page)).open();
  const link = await out.link();
  await page.getByRole('button', { name: 'Print the class sheet (A4 or Letter)' }).click();
  await page.getByRole('article', { includeHidden: true }).waitFor({ state: 'attached' });
  const printed = read(await page.pdf({ format: 'A4', margin: EDGES }), 'story-class-sheet.pdf');
  const code = out.dialog.getByRole('img', { name: /A square code/ });
  await code.evaluate((drawn) => drawn.scrollIntoView({ block: 'center' }));
  const seen = read(await code.screenshot(), 'story-code.png');
  return { link, printed, seen };
}

/// What is to be weighed, part by part, as it is read.
const weights = async (page) => plain(await page.getByRole('region', { name: 'What to weigh' }).innerText());

test('a class of twelve: planned, printed, opened from the code on a phone, scaled, kept, without a signal', async (session) => {
  const { link, printed, seen } = await teach(session);
  assert.equal(printed.pages, 1);
  // The sheet's own code opens the loaf that the sheet prints; the code on the screen what is shared.
  assert.equal(printed.codes.length, 1);
  const loaf = await session.open('phone', { at: printed.codes[0].slice(session.address.length) });
  const ofLoaf = (await weights(loaf.page)).replace(/^To weigh for .*\n/, '').match(/\d+(?= g)/g).slice(0, 3);
  for (const grams of ofLoaf) assert.match(printed.text, new RegExp(`\\b${grams}\\b`), `${grams} g stands on the sheet`);
  assert.match(printed.text, /12 students at 6 benches/);
  assert.deepEqual(seen.codes, [link], 'the code on the screen opens the formula');

  const student = await session.open('phone', { at: seen.codes[0].slice(session.address.length) });
  const { page, context } = student;
  const at = new AppPage(page);
  assert.equal(await at.name(), NAME);
  await at.notice('This formula came with a link').waitFor();
  await page.getByText('Ready to work with no signal.').waitFor();
  await cached(page);
  const toDo = page.getByRole('region', { name: 'What to do' });
  await toDo.getByText(/^Cool/).first().waitFor();
  const steps = plain(await toDo.innerText());
  assert.match(steps, /Pour \d+ g of boiling water over both flours/);
  assert.match(steps, /into the fridge, covered, for 1\d h/);
  assert.match(steps, /Done at 8\d to 9\d °C in the middle/);
  await shot(page, 'visit-phone');

  await scaleToOwnTin(page);
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  await at.notice('This formula came with a link').waitFor({ state: 'hidden' });
  const batch = await new BatchPage(page).open();
  const dough = await batch.key('Dough to mix');

  await context.setOffline(true);
  await page.reload();
  await ready(page);
  assert.equal(await at.name(), `${NAME} (2)`, 'it opens in flight mode, named apart from the example');
  await until(() => batch.key('Dough to mix'), (now) => now === dough, 'the batch is as it was left');
  await at.go('Chocolate');
  await at.go('Day');
  await at.saysNothingWrong();
});

/// A round tin of 20 cm, straight and 8 deep: π × 10² × 8 = 2513.3 cm³; at 3.9 cm³/g 644 g.
async function scaleToOwnTin(page) {
  const before = await weights(page);
  await page.getByText('or my tin', { exact: true }).click();
  await page.getByRole('combobox', { name: 'Baked in' }).selectOption({ label: 'Round tin' });
  for (const [name, text] of [[/^Across the rim/, '20'], [/^Across the bottom/, '20'], [/^Depth/, '8']]) {
    await page.getByRole('textbox', { name }).fill(text);
  }
  const tin = page.getByRole('region', { name: 'How much?', exact: true });
  await reads(tin, /2\.51 l.*644 g/s);
  await page.getByRole('button', { name: 'Make the batch for these tins' }).click();
  await until(() => weights(page), (now) => now !== before, 'the weights follow the tin');
  // Pieces can be asked for as well, with nothing to set up before.
  await page.getByRole('combobox', { name: 'Scale by' }).selectOption({ label: 'Pieces' });
  await page.getByRole('textbox', { name: /^Pieces/ }).first().fill('7');
  await until(() => weights(page), (now) => /7 × /.test(now), 'seven pieces');
}

test('a visitor tries something, looks how a figure came about, and nothing is kept by that', async (session) => {
  const teacher = await session.open('wide');
  const link = await (await new Share(new AppPage(teacher.page)).open()).link();
  const { page } = await session.open('phone', { at: link.slice(session.address.length) });
  await page.getByRole('region', { name: 'Shared with you' }).waitFor();
  await page.getByRole('button', { name: 'Try something without changing it' }).click();
  await page.getByRole('region', { name: 'Trial' }).waitFor();
  const before = await weights(page);
  await page.getByRole('textbox', { name: /^Whole milk, weight/ }).first().fill('90');
  await until(() => weights(page), (now) => now !== before, 'a trial shows in what is weighed');
  await page.getByRole('button', { name: 'Drop', exact: true }).click();
  await until(() => weights(page), (now) => now === before, 'dropped, all is as it was');
  await new AppPage(page).keyFigure('Dough to mix').click();
  await page.getByRole('dialog').waitFor();
});

for (const screen of ['phone', 'wide']) {
  for (const colorScheme of ['light', 'dark']) {
    test(`what a visitor sees is open to all (${screen}, ${colorScheme})`, async (session) => {
      const teacher = await session.open('wide');
      const link = await (await new Share(new AppPage(teacher.page)).open()).link();
      const { page } = await session.open(screen, { at: link.slice(session.address.length), colorScheme });
      await page.getByText('Ready to work with no signal.').waitFor();
      await shot(page, `visit-${screen}-${colorScheme}`);
      await whole(page);
      await drawn(page);
      assert.deepEqual(await axe(page), []);
      assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
    });
  }
}
