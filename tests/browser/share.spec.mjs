//! Sharing: the square code, printed pages, other files; importing a recipe.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { read, withoutPrinter } from './decode.mjs';
import { axe, shot } from './launch.mjs';
import { Share } from './pages/share.mjs';
import { openRecord } from './pages/storage.mjs';
import { AppPage, counts, reads } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const RECIPES = new URL('../sheet/recipes/', import.meta.url);

async function openShare(session, screen = 'phone', options) {
  const { page } = await session.open(screen, { before: withoutPrinter, ...options });
  await page.getByRole('button', { name: 'Share' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('heading', { name: 'As a square code' }).waitFor();
  return { page, dialog };
}

test('the link is a square code that is drawn, named and saved', async (session) => {
  const { page, dialog } = await openShare(session);
  const code = dialog.getByRole('img', { name: /A square code that holds the link/ });
  const side = await code.locator('svg').getAttribute('viewBox');
  const squares = Number(side.split(' ')[2]) - 8;
  assert.equal((squares - 17) % 4, 0, 'a side the standard knows');
  assert.ok(squares <= 97, 'read at ease');
  await code.scrollIntoViewIfNeeded();
  await shot(page, 'hand-out-code');
  for (const [name, ending, begins] of [['Save the code as SVG', '.svg', '<svg'], ['Save the code as PNG', '.png', '\u0089PNG']]) {
    const [file] = await Promise.all([page.waitForEvent('download'), dialog.getByRole('button', { name }).click()]);
    assert.ok(file.suggestedFilename().endsWith(ending));
    assert.ok(readFileSync(await file.path()).toString('latin1').startsWith(begins));
  }
});

test('the code fills the screen, and a tap closes it', async (session) => {
  const { page, dialog } = await openShare(session);
  const code = dialog.getByRole('img', { name: /A square code that holds the link/ });
  await dialog.getByRole('button', { name: 'Full screen' }).click();
  const { width } = await code.boundingBox();
  assert.equal(width, page.viewportSize().width);
  await code.click();
  assert.ok((await code.boundingBox()).width < width);
});

const CARD = /^Print the bench card \((A5|A4 or Letter)\)$/;
const SHEET = 'Print the class sheet (A4 or Letter)';
/// What paper there is, mm: as printed by a browser that goes by the page, or by its own paper.
const PAPERS = { A5: [148, 210], A4: [210, 297], Letter: [216, 279] };

/// Prints the page, and reads it as a scanner and a phone would.
async function printed(page, paper, name) {
  const edge = paper === 'A5' ? '8mm' : '10mm';
  const margin = { top: edge, bottom: edge, left: edge, right: edge };
  const ways = paper === 'A5' ? { preferCSSPageSize: true, margin } : { format: paper, margin };
  const found = read(await page.pdf(ways), `${name}-${paper}.pdf`);
  assert.equal(found.pages, 1, `${name} on ${paper} takes one page`);
  assert.deepEqual(found.mm, PAPERS[paper]);
  const [left, top, right, bottom] = found.ink;
  assert.ok(left > 0.02 && top > 0.02 && right < 0.98 && bottom < 0.985, `nothing is cut off: ${found.ink}`);
  return found;
}

/// The one code on the page opens a formula of this name in another profile.
async function opens(session, codes, name) {
  assert.equal(codes.length, 1);
  const { page } = await session.open('phone', { at: codes[0].slice(session.address.length) });
  assert.equal(await new AppPage(page).name(), name);
}

for (const [button, paper] of [[CARD, 'A5'], [SHEET, 'A4'], [SHEET, 'Letter']]) {
  test(`one page, whose code opens the formula: ${button} on ${paper}`, async (session) => {
    const { page, dialog } = await openShare(session);
    const link = await dialog.getByRole('textbox', { name: /^A link/ }).inputValue();
    await dialog.getByRole('button', { name: button, exact: true }).click();
    await page.getByRole('article', { includeHidden: true }).waitFor({ state: 'attached' });
    const found = await printed(page, paper, button === CARD ? 'card' : 'sheet');
    // The class sheet's code opens the loaf that the sheet prints.
    if (button === CARD) assert.deepEqual(found.codes, [link]);
    else await opens(session, found.codes, 'Lantern Lane chocolate loaf');
    assert.match(found.text, /Lantern Lane chocolate loaf/);
    assert.match(found.text, /Your local food-safety rules/);
    await page.emulateMedia({ media: 'print' });
    assert.equal(await page.getByRole('dialog').isVisible(), false, 'only the paper is printed');
  });
}

/// A formula with so many parts of so many ingredients each, as a file.
async function crowded(page, parts, each = 8) {
  const record = await openRecord(page);
  const [dough] = record.formula.streams.filter((part) => part.kind === 'final');
  const lines = Array.from({ length: each }, (_, at) => dough.lines[at % dough.lines.length]);
  const kinds = ['paste', 'preferment', 'final', 'filling', 'topping', 'wash'];
  record.formula.streams = Array.from({ length: parts }, (_, at) => ({
    kind: kinds[at % kinds.length], name: `Stream number ${at + 1} of a long evening`,
    lines: lines.map((line, row) => ({ ...line, mass_g: 10 + at + row / 2 })),
  }));
  record.batch.wanted = { by: 'times', times: 1 };
  record.name = `Crowded ${parts}`;
  return JSON.stringify(record);
}

for (const [parts, paper] of [[2, 'A5'], [4, undefined], [6, 'A4']]) {
  test(`a formula of ${parts * 8} ingredients is printed on one page, or on larger paper that is told before`, async (session) => {
    const { page } = await session.open('wide', { before: withoutPrinter });
    const out = await new Share(new AppPage(page)).open();
    await out.take(await crowded(page, parts));
    await out.app.close();
    await out.open();
    await page.getByRole('heading', { name: 'On paper' }).waitFor();
    const large = await page.getByText('the bench card is set for A4 or Letter').isVisible();
    if (paper) assert.equal(large, paper === 'A4', 'it is told before printing');
    await counts(page.getByText('take more than one page'), 0);
    const link = await out.link();
    await page.getByRole('button', { name: CARD }).click();
    await page.getByRole('article', { includeHidden: true }).waitFor({ state: 'attached' });
    const isSmall = await page.getByRole('article', { includeHidden: true }).evaluate((one) => one.classList.contains('bench-card'));
    assert.equal(isSmall, !large, 'it is printed on what was told');
    const card = await printed(page, large ? 'A4' : 'A5', `card-${parts * 8}`);
    if (large) await printed(page, 'Letter', `card-${parts * 8}`);
    assert.deepEqual(card.codes, [link]);
    assert.match(card.text, new RegExp(`Stream number ${parts} of`));
    assert.match(card.text, /Your local food-safety rules/);
    await page.getByRole('button', { name: SHEET }).click();
    await page.getByRole('article', { includeHidden: true }).filter({ has: page.getByRole('columnheader', { includeHidden: true }) }).waitFor({ state: 'attached' });
    for (const sheet of ['A4', 'Letter']) {
      const found = await printed(page, sheet, `sheet-${parts * 8}`);
      await opens(session, found.codes, `Crowded ${parts}`);
      assert.match(found.text, /Your local food-safety rules/);
    }
  });
}

test('a formula of nearly two hundred ingredients says before printing that a page does not hold it', async (session) => {
  const { page } = await session.open('wide');
  const out = await new Share(new AppPage(page)).open();
  await out.take(await crowded(page, 12, 16));
  await out.app.close();
  await out.open();
  await page.getByText('take more than one page for the bench').waitFor();
});

/// Words that do not pack well, as a note in a script of many signs.
const NOTE = Array.from({ length: 900 }, (_, at) => String.fromCodePoint(0x4e00 + ((at * 7919) % 20_000))).join('');

test('what makes a link too long is left out with one tap, from the link only', async (session) => {
  const { page } = await session.open('phone');
  const app = new AppPage(page);
  const out = await new Share(app).open();
  const record = await openRecord(page);
  await out.take(JSON.stringify({ ...record, name: 'With a long note', note: NOTE }));
  await app.close();
  await out.open();
  await page.getByText(/characters, and a code that phones still read holds/).waitFor();
  const before = await out.link();
  await page.getByText('Make link and code shorter').click();
  const note = page.getByRole('button', { name: /^Leave out the note: [\d,]+ characters less, which is enough for a code$/ });
  const saves = Number((await note.innerText()).match(/[\d,]+/)[0].replace(',', ''));
  await note.click();
  await page.getByRole('img', { name: /A square code/ }).waitFor();
  const after = await out.link();
  assert.equal(before.length - after.length, saves, 'it saves what it says');
  await shot(page, 'hand-out-shorter');
  assert.equal((await openRecord(page)).note, NOTE, 'the formula keeps its note');
  const visit = await session.open('phone', { at: after.slice(session.address.length) });
  assert.equal(await new AppPage(visit.page).name(), 'With a long note');
  await page.getByRole('button', { name: /^Put the note back/ }).click();
  await page.getByText(/characters, and a code that phones still read holds/).waitFor();
  assert.equal(await out.link(), before);
});

test('the formula goes out as a table, a recipe, text and Markdown', async (session) => {
  const { page, dialog } = await openShare(session);
  for (const [name, begins] of [
    ['Table for spreadsheets (CSV)', '\ufeffpart,kind,ingredient'],
    ['Recipe data (schema.org)', '{"@context":"https://schema.org"'],
    ['Plain text', 'Lantern Lane chocolate loaf'],
    ['Markdown', '# Lantern Lane chocolate loaf'],
  ]) {
    const [file] = await Promise.all([page.waitForEvent('download'), dialog.getByRole('button', { name }).click()]);
    assert.ok(readFileSync(await file.path(), 'utf8').startsWith(begins), name);
  }
});

test('a recipe is taken in line by line and put on the shelf', async (session) => {
  const { page, dialog } = await openShare(session);
  const take = async (name) => {
    await dialog.getByLabel('Open a recipe').setInputFiles({
      name, mimeType: 'text/html', buffer: readFileSync(new URL(name, RECIPES)),
    });
  };
  await take('understood.csv');
  await reads(dialog.getByText(/no recipe in the form/), /makes sense up to line 1/);
  await take('unknown_foods.json');
  const line = dialog.getByRole('listitem').filter({ hasText: 'date syrup' });
  await reads(line, /1 cup date syrup\s+Nothing published says what one cup/);
  await take('whole_page.html');
  await dialog.getByRole('button', { name: 'Add to the shelf' }).click();
  const at = new AppPage(page);
  assert.equal(await at.name(), 'Whole page');
});

for (const colorScheme of ['light', 'dark']) {
  test(`handing out is open to all (${colorScheme})`, async (session) => {
    const { page } = await openShare(session, 'phone', { colorScheme });
    assert.deepEqual(await axe(page), []);
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
  });
}
