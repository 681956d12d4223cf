//! Paper: type that fills the page and is not cut, parts that say their names again, a card with the steps and weights of the bench.

import assert from 'node:assert/strict';
import { read, withoutPrinter } from './decode.mjs';
import { BatchPage, plain, unfold } from './pages/batch.mjs';
import { DayPage, onFriday } from './pages/day.mjs';
import { openRecord } from './pages/storage.mjs';
import { Share } from './pages/share.mjs';
import { AppPage, reads, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

const CARD = /^Print the bench card \((A5|A4 or Letter)\)$/;
const TEACHERS = 'Print the teacher’s card';
const SHEET = 'Print the class sheet (A4 or Letter)';
/// The least type of a page, and of the cautions on it, points: small letters are 1.2 mm high at 6.75.
/// Source: Regulation (EU) No 1169/2011, article 13(2).
const LEAST = 7.5;
const LEAST_CAUTION = 6.75;
/// What a printer leaves free on each paper, and the printed height of the smaller of A4 and Letter, mm.
const EDGES = { A5: '8mm', A4: '10mm', Letter: '10mm' };
const HEIGHTS = { A5: 194, A4: 259, Letter: 259 };

/// Prints one of the pages; returns what it is printed on.
async function printed(page, button) {
  await page.evaluate(() => { window.asked = false; });
  const asked = page.getByRole('button', { name: button, exact: true });
  const says = await asked.innerText();
  await asked.click();
  await page.waitForFunction(() => window.asked);
  const papers = await page.evaluate(() => [...document.querySelectorAll('article.paper')].map((one) => (one.classList.contains('bench-card') ? 'A5' : 'A4')));
  if (button === CARD) assert.equal(says.includes('A5'), papers.every((one) => one === 'A5'), `${says}: ${papers}`);
  return papers;
}

/// How each page lies on its paper, as it is printed: type, height, what of its text is cut.
async function laidOut(page) {
  await page.emulateMedia({ media: 'print' });
  const found = await page.evaluate(() => [...document.querySelectorAll('article.paper')].map((paper) => {
    const all = [paper, ...paper.querySelectorAll('*:not(svg, svg *)')];
    const written = all.filter((one) => [...one.childNodes].some((node) => node.nodeType === 3 && node.data.trim()));
    const inside = paper.getBoundingClientRect();
    const size = (one) => parseFloat(getComputedStyle(one).fontSize) * 72 / 96;
    return {
      points: size(paper),
      least: Math.min(...written.map(size)),
      high: paper.scrollHeight * 25.4 / 96,
      cut: written.filter((one) => {
        const box = one.getBoundingClientRect();
        const style = getComputedStyle(one);
        const over = style.display !== 'inline' && (one.scrollWidth > one.clientWidth + 1 || one.scrollHeight > one.clientHeight + 2);
        return over || box.left < inside.left - 1 || box.right > inside.right + 1 || box.bottom > inside.bottom + 1;
      }).map((one) => one.outerHTML.slice(0, 120)),
    };
  }));
  await page.emulateMedia({ media: null });
  return found;
}

/// A formula of one's own, as a file: so many lines of dough, and a note.
async function ownFormula(page, name, lines, note = '') {
  const record = await openRecord(page);
  const [dough] = record.formula.streams.filter((part) => part.kind === 'final');
  dough.lines = Array.from({ length: lines }, (_, at) => ({ ...dough.lines[at % dough.lines.length], mass_g: 20 + 3 * at }));
  record.formula.streams = record.formula.streams.filter((part) => ['paste', 'final'].includes(part.kind));
  record.batch.wanted = { by: 'times', times: 1 };
  return JSON.stringify({ ...record, name, note });
}

async function withFormula(session, make, now) {
  const { page } = await session.open('wide', { before: withoutPrinter });
  if (now) await page.clock.setFixedTime(now);
  const out = await new Share(new AppPage(page)).open();
  if (make) {
    await out.take(await make(page));
    await out.app.close();
    await out.open();
  }
  await page.getByRole('heading', { name: 'On paper' }).waitFor();
  return { page, out };
}

const LONG = Array.from({ length: 40 }, (_, at) => `Rule ${at + 1} of the evening: weigh first, then read on.`).join(' ');
const FORMULAS = [
  ['the example', undefined],
  ['14 lines of dough', (page) => ownFormula(page, 'Fourteen lines', 14)],
  ['a long note', (page) => ownFormula(page, 'Long note', 9, LONG)],
  ['three lines', (page) => ownFormula(page, 'Three lines', 3)],
];

for (const [what, make] of FORMULAS) {
  test(`the type fills the page and nothing is cut: ${what}`, async (session) => {
    const { page } = await withFormula(session, make);
    for (const button of [CARD, TEACHERS, SHEET]) {
      const [own] = await printed(page, button);
      const papers = own === 'A5' ? ['A5'] : ['A4', 'Letter'];
      const [found] = await laidOut(page);
      assert.deepEqual(found.cut, [], `${button}: nothing is cut`);
      assert.ok(found.points >= LEAST && found.least >= LEAST_CAUTION - 0.01, `${button}: ${found.points} and ${found.least} points`);
      assert.ok(found.high <= HEIGHTS[own] + 0.5, `${button}: ${found.high} mm`);
      const greatest = own === 'A5' ? 12 : 14;
      assert.ok(found.points === greatest || found.high > 0.85 * HEIGHTS[own], `${button}: ${found.points} points fill ${found.high} mm`);
      for (const paper of papers) {
        const edge = EDGES[paper];
        const margin = { top: edge, bottom: edge, left: edge, right: edge };
        const ways = paper === 'A5' ? { preferCSSPageSize: true, margin } : { format: paper, margin };
        const pdf = read(await page.pdf(ways), `paper-${what.replaceAll(' ', '-')}-${String(button).match(/card|sheet/g).pop()}-${paper}.pdf`);
        assert.equal(pdf.pages, 1, `${button} on ${paper}`);
        const [left, top, right, bottom] = pdf.ink;
        assert.ok(left > 0.02 && top > 0.02 && right < 0.98 && bottom < 0.985, `${pdf.ink}`);
      }
    }
  });
}

test('a part that goes on in another column says its name again', async (session) => {
  const { page } = await withFormula(session, (page) => ownFormula(page, 'Split', 24));
  await printed(page, CARD);
  const captions = (await page.locator('.paper caption').allTextContents()).map(plain);
  assert.ok(captions.includes('Final dough, continued'), captions.join('; '));
  // Each table stands under a name, and no line is lost.
  const tables = await page.locator('.paper .weights table').evaluateAll((all) => all.map((one) => [one.caption?.textContent, one.rows.length]));
  assert.ok(tables.every(([name, rows]) => name && rows > 0));
});

/// The weights and steps of the card, as they are read.
async function onCard(page) {
  const rows = await page.locator('.paper .weights tr').evaluateAll((all) => all.map((row) => [...row.cells].map((cell) => cell.textContent).join(' | ')));
  const steps = await page.locator('.paper .steps li').evaluateAll((all) => all.map((one) => one.textContent));
  return { rows: rows.map(plain), steps: steps.map(plain) };
}

/// A time of day, which a card without a plan has none of.
const CLOCK = /\d:\d\d/;
const PREDICTED = /[\d.]+ (°C|min)/g;

test('the card has the steps, sentences and weights of the bench', async (session) => {
  const { page, day } = await onFriday(session, 'phone', { before: withoutPrinter });
  const out = await new Share(new AppPage(page)).open();
  await printed(page, CARD);
  const card = await onCard(page);
  await out.app.close();
  await new DayPage(page).open();
  await day.start();
  const seen = [];
  for (let step = 0; step < 40; step += 1) {
    const { done, early } = day;
    await done.or(early).or(page.getByRole('button', { name: /^Finish/ })).waitFor();
    if (await early.isVisible()) {
      await day.next();
      continue;
    }
    if (!(await done.isVisible())) break;
    const top = plain(await page.locator('.bench-top').innerText());
    const rows = await day.bench.locator('.to-weigh > li').evaluateAll((all) => all.map((row) => [row.querySelector('.name').textContent, row.querySelector('.shows').textContent].join(' | ')));
    seen.push({ name: plain(await day.at()), sentence: plain(await day.bench.locator('.sentence').innerText()), rows: rows.map(plain), of: Number(top.match(/of (\d+)/)[1]) });
    await day.next();
  }
  // What waits for nothing may change places at a bench where all is begun at once.
  const names = card.steps.map((said) => said.split(':')[0]);
  assert.deepEqual(names.toSorted(), seen.map(({ name }) => name).toSorted(), 'the same steps');
  assert.deepEqual([names[0], names.at(-1)], [seen[0].name, seen.at(-1).name]);
  assert.ok(seen.every(({ of }) => of === card.steps.length), 'and the same number of them');
  for (const { name, sentence, rows } of seen) {
    const said = card.steps.find((one) => one.startsWith(`${name}:`));
    // A bench that is tapped through in a minute has its paste in hot: its temperatures and times are those of that minute.
    const bare = (text) => text.replaceAll(PREDICTED, '$1');
    if (!CLOCK.test(sentence)) assert.ok(bare(said).includes(bare(sentence)), `${said} / ${sentence}`);
    for (const row of rows) assert.ok(card.rows.includes(row), `${row} is among: ${card.rows.join('; ')}`);
  }
  assert.ok(seen.flatMap(({ rows }) => rows).length >= card.rows.length - 3, 'most of what is weighed has a row at the bench');
  assert.ok(!card.steps.some((one) => CLOCK.test(one)), 'no time of day without a plan');
});

// A plan without a time of its own is begun in the evening, whenever the card is printed.
for (const hour of ['06:40', '18:40', '23:10']) test(`a link lists the steps of the card that is printed at ${hour}`, async (session) => {
  const { page, out } = await withFormula(session, undefined, new Date(`2026-03-27T${hour}:00`));
  const link = await out.link();
  await printed(page, CARD);
  const { steps, rows } = await onCard(page);
  const visit = await session.open('phone', { at: link.slice(session.address.length) });
  const list = visit.page.getByRole('region', { name: 'What to do' });
  await list.locator('ol > li').first().waitFor();
  const names = await list.locator('ol > li > b').allTextContents();
  assert.deepEqual(names.map(plain), steps.map((said) => said.split(':')[0]));
  const weights = plain(await visit.page.getByRole('region', { name: 'What to weigh' }).innerText()).replaceAll('\t', ' ');
  for (const row of rows) assert.ok(weights.includes(row.replace(' | ', ' ')), `${row} is among: ${weights}`);
});

test('a class has a card for each kind of bench and one for the teacher', async (session) => {
  const { page } = await session.open('wide', { before: withoutPrinter });
  const batch = await new BatchPage(page).open();
  await unfold(page, 'Class');
  await page.getByRole('textbox', { name: /^Students in the room/ }).fill('13');
  await page.getByRole('textbox', { name: /^At one bench/ }).fill('2');
  const card = page.getByRole('main').getByRole('group').filter({ has: page.getByText('Class', { exact: true }) });
  await reads(card, /13 students at 7 benches/);
  await page.getByRole('button', { name: 'Set the batch for the whole class' }).click();
  assert.ok(await batch.key('Pieces'));
  const out = await new Share(new AppPage(page)).open();
  await page.getByRole('heading', { name: 'On paper' }).waitFor();
  await printed(page, SHEET);
  const sheet = await page.locator('.paper tbody tr:not(.begins, .sum)').evaluateAll((all) => all.map((row) => [...row.cells].map((cell) => cell.textContent)));
  const tidy = (text) => plain(text).replaceAll(/[\u2007\u2008\u2060]/g, '');
  assert.equal((await printed(page, CARD)).length, 2, 'seven benches, one of them with one student');
  for (const [at, paper] of (await page.locator('article.paper').all()).entries()) {
    const rows = await paper.locator('.weights tr').evaluateAll((all) => all.map((row) => [...row.cells].map((cell) => cell.textContent)));
    const bench = rows.filter(([food]) => !food.includes('all of it')).map((row) => row.map(tidy).join(' '));
    assert.deepEqual(bench, sheet.map((row) => `${tidy(row[0])} ${tidy(row[1 + at])}`), 'the bench’s own weights');
  }
  const fits = await laidOut(page);
  assert.ok(fits.every(({ cut, points }) => cut.length === 0 && points >= LEAST));
  await printed(page, TEACHERS);
  const teachers = plain(await page.locator('article.paper').evaluate((paper) => paper.textContent));
  assert.match(teachers, /the teacher’s card13 students at 7 benches/);
  assert.match(teachers, /Oven: Load 1: loaves 1 to/);
  await out.app.close();
});

/// How times are written. Source: Unicode CLDR 44, units hour and minute, short; Japanese narrow.
const STYLES = { 'en-GB': /^(\d+ h( \d+ min)?|\d+ min)$/, 'es-ES': /^(\d+ h( \d+ min)?|\d+ min)$/, 'ja-JP': /^(\d+ ?時間( ?\d+ ?分)?|\d+ ?分)$/ };

for (const [locale, style] of Object.entries(STYLES)) {
  test(`a rise among the key figures is written as all times are, on one line (${locale})`, async (session) => {
    const { page } = await session.open('phone', { locale });
    await page.getByRole('navigation').getByRole('link').last().click();
    const values = page.locator('.keys button > :first-child');
    const times = await until(async () => (await values.allInnerTexts()).map(plain), (all) => all.some((value) => style.test(value)), `a time in the style ${style}`);
    assert.ok(!times.some((value) => /\d:\d\d ?h/.test(value)), times.join('; '));
    const lines = await values.evaluateAll((all) => all.map((one) => one.getClientRects().length));
    assert.ok(lines.every((count) => count === 1));
    assert.equal(await page.evaluate(() => document.documentElement.scrollWidth > innerWidth), false);
  });
}
