//! Sharing and import: link and file hold everything, and no file can do harm.

import assert from 'node:assert/strict';
import { ready } from './launch.mjs';
import { Formula } from './pages/formula.mjs';
import { unfold } from './pages/batch.mjs';
import { Share } from './pages/share.mjs';
import { Shelf } from './pages/shelf.mjs';
import { all, openRecord } from './pages/storage.mjs';
import { counts, holds } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const EXAMPLES = ['Egg and butter loaf', 'Lantern Lane chocolate loaf', 'Rye scald loaf', 'Toast loaf for the class'];

const sheets = async (page) => Object.entries(await all(page))
  .filter(([key]) => key.startsWith('softcrumb.formula.')).map(([, text]) => text).sort();

test('the link that is handed out opens elsewhere as the same formula, and is at most 600 characters', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  await formula.type(formula.weight('Final dough', 'Salt'), '9.1');
  const record = await openRecord(page);
  const link = await (await new Share(formula).open()).link();
  assert.ok(link.length <= 600 + session.address.length, `${link.length} characters`);
  const other = await session.open('phone', { at: new URL(link).hash });
  const visitor = new Formula(other.page);
  assert.equal(await visitor.name(), 'Lantern Lane chocolate loaf');
  await visitor.openWritten();
  await holds(visitor.weight('Final dough', 'Salt'), '9.1');
  await other.page.getByRole('button', { name: 'Keep it', exact: true }).click();
  const named = { ...record, name: `${record.name} (2)` };
  assert.deepEqual(await openRecord(other.page), named, 'nothing is lost on the way; the example there has the name');
});

test('a file of all formulas taken in elsewhere brings every one, whole', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  await formula.type(formula.weight('Final dough', 'Salt'), '9.1');
  const { name, text } = await (await new Share(formula).open()).save('Save all formulas');
  assert.match(name, /^softcrumb-.*\.json$/);
  const kept = await sheets(page);
  const other = new Formula((await session.open('phone')).page);
  const said = await (await new Share(other).open()).take(text);
  assert.match(said, /4|four/i);
  const there = await sheets(other.page);
  for (const sheet of kept) assert.ok(there.includes(sheet), sheet.slice(0, 80));
});

test('a file of everything brings tins, prices and class along, says so, and adds nothing twice', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  await formula.go('Batch');
  await page.getByRole('button', { name: 'Save tin' }).click();
  for (const title of ['Shopping and cost', 'Class']) await unfold(page, title);
  await page.getByRole('textbox', { name: /^One pack holds/ }).fill('2000');
  await page.getByRole('textbox', { name: /^One pack costs/ }).fill('24.5');
  await page.getByRole('textbox', { name: /^Students in the room/ }).fill('9');
  const { text } = await (await new Share(formula).open()).save('Save all formulas');
  const other = new Formula((await session.open('phone')).page);
  await other.go('Batch');
  const hand = await new Share(other).open();
  const said = await hand.take(text);
  assert.match(said, /Added: one tin, the packet of one ingredient and the class\. What was here stays as it is\./);
  await other.close();
  // What is far off the screen is not laid out, but it is there.
  await other.page.getByRole('button', { name: 'Remove from my tins' }).waitFor({ state: 'attached' });
  const before = await all(other.page);
  assert.match(before['softcrumb.pantry'], /"price":24.5/);
  assert.match(before['softcrumb.class'], /"students":9/);
  await hand.open();
  assert.doesNotMatch(await hand.take(text), /Added/);
  for (const key of ['softcrumb.tins', 'softcrumb.pantry', 'softcrumb.class']) assert.equal((await all(other.page))[key], before[key]);
});

test('the same file taken in twice leaves as many formulas as before', async (session) => {
  const formula = new Formula((await session.open('phone')).page);
  const share = await new Share(formula).open();
  const { text } = await share.save('Save all formulas');
  await share.take(text);
  assert.equal((await sheets(formula.page)).length, EXAMPLES.length);
});

test('a file carries the formula’s name', async (session) => {
  const formula = new Formula((await session.open('phone')).page);
  const { name } = await (await new Share(formula).open()).save('Save this formula');
  assert.match(name, /^lantern-lane-chocolate-loaf-\d{4}-\d\d-\d\d\.json$/);
});

test('a file of one formula holds just that one', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const { text } = await (await new Share(formula).open()).save('Save this formula');
  assert.ok(text.includes('Lantern Lane chocolate loaf') && !text.includes('Rye scald loaf'));
});

const BAD_FILES = [
  ['of 50 MB', Buffer.alloc(50_000_000, 'x'), /too large|MB/],
  ['of a newer release', '{"softcrumb":"formulas","version":99,"formulas":[]}', /newer release/],
  ['cut short', '{"softcrumb":"formulas","version":1,"formulas":[{"sheet":', /cut short or changed/],
  ['that is no JSON', 'flour 500 g\nwater 300 g', /cut short or changed|holds no formula/],
  ['of something else', '{"recipe":"bread"}', /holds no formula/],
  ['that is empty', '', /nothing in the file/],
  ['that is a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0, 0xff, 0xfe]), /cut short or changed|holds no formula/],
];

test('a file that cannot be taken in is answered in words, and nothing is changed', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const before = await all(page);
  for (const [what, text, answer] of BAD_FILES) {
    const hand = await new Share(formula).open();
    assert.match(await hand.take(text), answer, `a file ${what}`);
    await formula.saysNothingWrong();
    await formula.close();
    assert.deepEqual(await all(page), before, `a file ${what}`);
  }
});

test('a formula put into the bin is off the shelf, and comes back whole', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const shelf = await new Shelf(formula).open();
  assert.deepEqual((await shelf.names()).sort(), EXAMPLES);
  const kept = await sheets(page);
  await shelf.bin('Rye scald loaf');
  assert.equal((await shelf.names()).includes('Rye scald loaf'), false);
  await formula.close();
  await page.reload();
  await ready(page);
  await shelf.open();
  await shelf.openBin();
  await shelf.putBack('Rye scald loaf');
  assert.deepEqual((await shelf.names()).sort(), EXAMPLES);
  assert.deepEqual(await sheets(page), kept);
  await shelf.pick('Rye scald loaf');
  assert.equal(await formula.name(), 'Rye scald loaf');
  await formula.saysNothingWrong();
});

test('after many changes the shelf asks for a file, until there is one', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const shelf = new Shelf(formula);
  const asks = formula.dialog.getByText(/changes since the last file/);
  await shelf.open();
  await counts(asks, 0, 'not on the first visit');
  await formula.close();
  await page.evaluate(() => localStorage.setItem('softcrumb.unfiled', '500'));
  await page.reload();
  await ready(page);
  await shelf.open();
  await asks.waitFor();
  await formula.close();
  await (await new Share(formula).open()).save('Save all formulas');
  await formula.close();
  await shelf.open();
  await counts(asks, 0);
});

test('the bin is emptied only when that has been said twice, and then for good', async (session) => {
  const { page } = await session.open('phone');
  const shelf = await new Shelf(new Formula(page)).open();
  await shelf.bin('Rye scald loaf');
  await shelf.openBin();
  await shelf.emptyBin();
  await shelf.dialog.getByRole('button', { name: 'Leave the bin as it is' }).click();
  const before = (await sheets(page)).length;
  await shelf.emptyBin();
  await shelf.dialog.getByRole('button', { name: 'Delete for good' }).click();
  await page.waitForFunction((most) => Object.keys(localStorage).filter((key) => key.startsWith('softcrumb.formula.')).length < most, before);
  await page.reload();
  await ready(page);
  await shelf.open();
  assert.deepEqual((await shelf.names()).sort(), EXAMPLES.filter((name) => name !== 'Rye scald loaf'));
  await counts(shelf.dialog.getByText('The bin', { exact: true }), 0);
});
