//! Handing out: the square code, paper of one page each, other files; a recipe taken in.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { axe, shot } from './launch.mjs';
import { plain } from './pages/batch.mjs';
import { Whole } from './pages/whole.mjs';
import { test } from './promises.mjs';

const RECIPES = new URL('../sheet/recipes/', import.meta.url);

async function handOut(desk, screen = 'phone', options) {
  const { page } = await desk.open(screen, options);
  await page.getByRole('button', { name: 'Hand out' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('heading', { name: 'As a square code' }).waitFor();
  return { page, dialog };
}

test('the link is a square code that is drawn, named and saved', async (desk) => {
  const { page, dialog } = await handOut(desk);
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

/// Pages of a PDF.
const pages = (pdf) => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g).length;
/// Width and height of its first page, in millimetres.
const size = (pdf) => {
  const box = pdf.toString('latin1').match(/\/MediaBox\s*\[\s*([\d.]+)\s+([\d.]+)\s+([\d.]+)\s+([\d.]+)/);
  return [Number(box[3]), Number(box[4])].map((points) => Math.round((points / 72) * 25.4));
};

for (const [name, format, wanted] of [
  ['Print the bench card (A5)', 'A4', [148, 210]],
  ['Print the class sheet (A4 or Letter)', 'A4', [210, 297]],
  ['Print the class sheet (A4 or Letter)', 'Letter', [216, 279]],
]) {
  test(`one page: ${name} on ${format}`, async (desk) => {
    const { page, dialog } = await handOut(desk);
    await dialog.getByRole('button', { name, exact: true }).click();
    await page.locator('.paper').waitFor({ state: 'attached' });
    const pdf = await page.pdf({ format, preferCSSPageSize: wanted[0] === 148, margin: { top: '10mm', bottom: '10mm', left: '10mm', right: '10mm' } });
    assert.equal(pages(pdf), 1);
    assert.deepEqual(size(pdf), wanted);
    await page.emulateMedia({ media: 'print' });
    const seen = plain(await page.locator('.paper').innerText());
    assert.match(seen, /Lantern Lane chocolate loaf/);
    assert.match(seen, /Your local food-safety rules/);
    assert.equal(await page.getByRole('dialog').isVisible(), false, 'only the paper is printed');
    await shot(page, `paper-${wanted[0]}`);
  });
}

test('the formula goes out as a table, a recipe, text and Markdown', async (desk) => {
  const { page, dialog } = await handOut(desk);
  for (const [name, begins] of [
    ['Table for spreadsheets (CSV)', 'stream,kind,ingredient'],
    ['Recipe for other programs', '{"@context":"https://schema.org"'],
    ['Plain text', 'Lantern Lane chocolate loaf'],
    ['Markdown', '# Lantern Lane chocolate loaf'],
  ]) {
    const [file] = await Promise.all([page.waitForEvent('download'), dialog.getByRole('button', { name }).click()]);
    assert.ok(readFileSync(await file.path(), 'utf8').startsWith(begins), name);
  }
});

test('a recipe is taken in line by line and put on the shelf', async (desk) => {
  const { page, dialog } = await handOut(desk);
  const take = async (name) => {
    await dialog.getByLabel('Open a recipe').setInputFiles({
      name, mimeType: 'text/html', buffer: readFileSync(new URL(name, RECIPES)),
    });
  };
  await take('understood.csv');
  assert.match(plain(await dialog.getByText(/no recipe in the form/).innerText()), /makes sense up to line 1/);
  await take('unknown_foods.json');
  const lines = dialog.locator('.recipe-lines');
  assert.match(plain(await lines.innerText()), /1 cup date syrup\s+Nothing published says what one cup/);
  await take('whole_page.html');
  await dialog.getByRole('button', { name: 'Put it on the shelf' }).click();
  const at = new Whole(page);
  assert.equal(await at.name(), 'Whole page');
});

for (const colorScheme of ['light', 'dark']) {
  test(`handing out is open to all (${colorScheme})`, async (desk) => {
    const { page } = await handOut(desk, 'phone', { colorScheme });
    assert.deepEqual(await axe(page), []);
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
  });
}
