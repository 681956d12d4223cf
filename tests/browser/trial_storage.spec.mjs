//! A trial outlasts reload and closing; another tab's change is never lost by it, nor it by that.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { ready } from './launch.mjs';
import { Formula } from './pages/formula.mjs';
import { keptForGood, openRecord, put, trials } from './pages/storage.mjs';
import { counts, holds, is, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const milk = (page) => page.weight('Final dough', 'Whole milk');
const salt = (page) => page.weight('Final dough', 'Salt');
/// A link that the first release has written.
const SAMPLE = readFileSync(new URL('../sheet/samples/v1.links.txt', import.meta.url), 'utf8').split('\n')[0];
const NAME = 'Lantern Lane chocolate loaf';

/// The weight of an ingredient of the final dough, in the record that is open.
async function kept(page, food) {
  const lines = (await openRecord(page.page)).formula.streams.flatMap((part) => part.lines);
  return lines.find((line) => line.name === food).mass_g;
}

async function another(context, address) {
  const page = new Formula(await context.newPage());
  await page.page.goto(address);
  await ready(page.page);
  return page;
}

/// Waits until so many trials wait for the tab that they belong to, as the browser's list of locks says.
async function waits(page, count) {
  const waiting = () => page.page.evaluate(async () => (await navigator.locks.query()).pending.length);
  await until(waiting, (seen) => seen === count, 'trials that wait');
}

/// Waits until so many trials are stored.
function stored(page, count) {
  return until(async () => Object.keys(await trials(page.page)).length, (seen) => seen === count, 'trials that are stored');
}

const noTrials = (page) => stored(page, 0);

/// A trial in which the milk is 160 g in place of 112.
async function tried(session, at) {
  const visit = await session.open('phone', { at });
  const page = new Formula(visit.page);
  await page.tryOut();
  await page.type(milk(page), '160');
  const record = async () => JSON.stringify(await trials(page.page));
  await until(record, (text) => /\b160\b/.test(text), 'the trial is stored');
  return { ...visit, page };
}

test('a trial is still on after a reload, and the formula is as it was kept', async (session) => {
  const { page } = await tried(session);
  const before = await keptForGood(page.page);
  const figures = await page.keyFigures();
  for (let turn = 0; turn < 3; turn += 1) {
    await page.page.reload();
    await ready(page.page);
    await page.trial.getByText(/Whole milk.*112.*160/).waitFor();
    await holds(milk(page), '160');
    await until(async () => JSON.stringify(await page.keyFigures()), (seen) => seen === JSON.stringify(figures), 'old and new beside each figure');
    assert.equal(await kept(page, 'Whole milk'), 112);
    await stored(page, 1);
  }
  assert.deepEqual(await keptForGood(page.page), before);
  await page.undo();
  await holds(milk(page), '112', 'one step back is where it began');
  await page.redo();
  await page.keepTrial();
  await until(() => kept(page, 'Whole milk'), (grams) => grams === 160, 'it is kept');
  await noTrials(page);
});

test('a trial waits when its tab is closed, and one that is dropped does not come back', async (session) => {
  const { page, context, address } = await tried(session);
  await page.page.close();
  const later = await another(context, address);
  await later.trial.getByText(/Whole milk.*112.*160/).waitFor();
  assert.equal(await kept(later, 'Whole milk'), 112);
  await later.dropTrial();
  await noTrials(later);
  await later.page.reload();
  await ready(later.page);
  await later.page.waitForLoadState('networkidle');
  await noTrials(later);
  await counts(later.trial, 0);
  await holds(milk(later), '112');
});

test('a trial whose tab is slow to go is taken up as soon as that is gone', async (session) => {
  const { page, context, address } = await tried(session);
  const other = await another(context, address);
  await waits(other, 1);
  await counts(other.trial, 0);
  await page.page.close();
  await other.trial.getByText(/Whole milk.*112.*160/).waitFor();
  await stored(other, 1);
});

test('a trial whose tab goes later changes nothing under the user’s hands, and waits for the next opening', async (session) => {
  const { page, context, address } = await tried(session);
  const other = await another(context, address);
  await waits(other, 1);
  await other.page.getByRole('main').press('Shift');
  await page.page.close();
  await waits(other, 0);
  await counts(other.trial, 0);
  await holds(milk(other), '112');
  await other.page.reload();
  await ready(other.page);
  await other.trial.getByText(/Whole milk.*112.*160/).waitFor();
});

test('a trial belongs to its tab: another that is open beside it shows the formula as it is kept', async (session) => {
  const { page, context, address } = await tried(session);
  const other = await another(context, address);
  await waits(other, 1);
  await counts(other.trial, 0);
  await holds(milk(other), '112');
  await other.tryOut();
  await other.type(salt(other), '9');
  await stored(page, 2);
  await other.dropTrial();
  await holds(milk(page), '160', 'the first goes on');
  await stored(page, 1);
});

test('changed in another tab meanwhile, a trial is kept as a copy, and nothing typed is lost', async (session) => {
  const { page, context, address } = await tried(session);
  const other = await another(context, address);
  await other.type(salt(other), '9.5');
  await page.trial.getByText('changed elsewhere since this trial began').waitFor();
  await counts(page.trial.getByRole('button', { name: 'Keep', exact: true }), 0);
  await holds(milk(page), '160', 'what is tried stands as it was typed');
  await page.trial.getByRole('button', { name: 'Save as a copy' }).click();
  await page.trial.waitFor({ state: 'hidden' });
  await is(() => page.name(), `${NAME} (2)`);
  await holds(milk(page), '160');
  await holds(salt(page), '8.6');
  await holds(milk(other), '112', 'the other tab keeps its own');
  await holds(salt(other), '9.5', 'the other tab keeps its own');
  await noTrials(page);
  await page.page.reload();
  await ready(page.page);
  await holds(milk(page), '160');
  await holds(salt(page), '8.6');
  await page.openShelf();
  await page.dialog.getByRole('button', { name: new RegExp(`^${NAME}(?! \\()`) }).click();
  await until(() => salt(page).inputValue(), (text) => text === '9.5', 'what the other tab typed is on the shelf');
});

test('changed in another tab meanwhile, a trial kept over it is undone to what the other tab typed', async (session) => {
  const { page, context, address } = await tried(session);
  const other = await another(context, address);
  await other.type(salt(other), '9.5');
  await page.trial.getByText('changed elsewhere').waitFor();
  await page.trial.getByRole('button', { name: 'Replace it' }).click();
  await page.trial.waitFor({ state: 'hidden' });
  await until(() => milk(other).inputValue(), (text) => text === '160', 'the other tab follows');
  await page.undo();
  await holds(milk(page), '112');
  await holds(salt(page), '9.5');
  await until(() => kept(page, 'Salt'), (grams) => grams === 9.5, 'and is kept');
});

test('a formula changed while its trial waited says so when that is taken up', async (session) => {
  const { page, context, address } = await tried(session);
  const other = await another(context, address);
  await salt(other).click();
  await page.page.close();
  await other.type(salt(other), '9.5');
  await other.page.reload();
  await ready(other.page);
  await other.trial.getByText('changed elsewhere since this trial began').waitFor();
  await holds(milk(other), '160');
  await other.dropTrial();
  await holds(milk(other), '112');
  await holds(salt(other), '9.5');
});

test('a damaged trial keeps no formula from opening, and is left as it is', async (session) => {
  const { page } = await session.open('phone');
  const formula = new Formula(page);
  const id = await page.evaluate(() => localStorage.getItem('softcrumb.open'));
  const key = `softcrumb.trial.${id}.aaaa`;
  for (const text of ['', 'rubbish', '{"softcrumb":"trial","version":1}', '{"softcrumb":"trial","version":99,"new":1}']) {
    await put(page, key, text);
    await page.reload();
    await ready(page);
    await formula.notice(/damaged|newer release/).waitFor();
    await holds(milk(formula), '112');
    await counts(formula.trial, 0);
    assert.equal((await trials(page))[key], text);
  }
});

test('a trial of a formula that came with a link waits for that link', async (session) => {
  const { page } = await session.open('phone', { at: `#loaf=${SAMPLE}` });
  const visit = new Formula(page);
  const box = visit.weight('Final <b>dough</b>', 'Whole milk');
  await visit.openWritten();
  const before = await box.inputValue();
  await visit.tryOut();
  await visit.type(box, '150');
  await page.reload();
  await ready(page);
  // What is tried is shown: the formula is open.
  await visit.trial.getByText(/Whole milk.*150/).waitFor();
  await holds(box, '150');
  await visit.dropTrial();
  await holds(box, before);
  await noTrials(visit);
});
