//! A formula shared as a link opens as a visitor's copy; a damaged link is reported in a sentence.

import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { ready } from './launch.mjs';
import { Formula } from './pages/formula.mjs';
import { all } from './pages/storage.mjs';
import { drawn, holds, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// A link that the first release has written; it opens for ever.
const SAMPLE = readFileSync(new URL('../sheet/samples/v1.links.txt', import.meta.url), 'utf8').split('\n')[0];
const NAME = 'Frozen sample';
const at = (link) => `#loaf=${link}`;

const formulas = async (page) => Object.keys(await all(page)).filter((key) => key.startsWith('softcrumb.formula.')).length;

/// The same link as a later release would write it: another version, rightly sealed.
function newer(link) {
  const bytes = Buffer.from(link, 'base64url').subarray(0, -4);
  bytes[0] = 99;
  const check = Buffer.alloc(4);
  check.writeUInt32LE(crc32(bytes));
  return Buffer.concat([bytes, check]).toString('base64url');
}

/// CRC-32, bit by bit (ISO-HDLC: polynomial EDB88320 reversed, all ones before and after).
function crc32(bytes) {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return ~sum >>> 0;
}

test('a link opens in a clean profile as a visitor’s copy that can be changed and is not kept', async (session) => {
  const { page } = await session.open('phone', { at: at(SAMPLE) });
  const app = new Formula(page);
  assert.equal(await app.name(), NAME);
  await app.notice('This formula came with a link').waitFor();
  await app.openWritten();
  assert.equal((await app.parts()).length, 6);
  const before = await all(page);
  await app.type(app.weight('Final <b>dough</b>', 'Whole milk'), '150');
  assert.equal(await app.percent('Final <b>dough</b>', 'Whole milk').inputValue() === '', false);
  for (const place of ['Batch', 'Chocolate', 'Formula']) {
    await app.go(place);
    await app.saysNothingWrong();
  }
  assert.deepEqual(await all(page), before, 'the visitor’s own shelf stays as it is');
  assert.equal(await formulas(page), 4, 'the four examples');
  await page.reload();
  await ready(page);
  assert.equal(await app.name(), NAME, 'the copy outlasts a reload, whatever place was looked at');
  await app.openWritten();
  await holds(app.weight('Final <b>dough</b>', 'Whole milk'), '150');
});

test('a visitor’s copy is kept with one tap and is there at the next visit', async (session) => {
  const { page, address } = await session.open('phone', { at: at(SAMPLE) });
  const app = new Formula(page);
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  await app.notice('This formula came with a link').waitFor({ state: 'hidden' });
  assert.equal(await formulas(page), 5);
  await page.goto(`${address}?later`);
  await ready(page);
  assert.equal(await app.name(), NAME);
  await app.notice('This formula came with a link').waitFor({ state: 'hidden' });
});

/// What messages put behind a link, or into it.
for (const [what, spoil] of [
  ['a dot behind it', (link) => `${link}.`], ['a bracket and a comma', (link) => `${link}),`],
  ['a quote behind it', (link) => `${link}”`], ['a line break in it', (link) => `${link.slice(0, 60)}%0A${link.slice(60)}`],
]) {
  test(`a link with ${what} opens all the same`, async (session) => {
    const { page } = await session.open('phone', { at: at(spoil(SAMPLE)) });
    assert.equal(await new Formula(page).name(), NAME);
  });
}

test('a link kept twice is one formula, which begins with what to weigh', async (session) => {
  const { page, address } = await session.open('phone', { at: at(SAMPLE) });
  const app = new Formula(page);
  const keep = page.getByRole('button', { name: 'Keep it', exact: true });
  await keep.click();
  await keep.waitFor({ state: 'hidden' });
  await page.goto(`${address}?again${at(SAMPLE)}`);
  await ready(page);
  await keep.click();
  await keep.waitFor({ state: 'hidden' });
  assert.equal(await formulas(page), 5, 'four examples and the one');
  await page.reload();
  await ready(page);
  await page.getByRole('region', { name: 'What to weigh' }).waitFor();
  await page.getByRole('button', { name: 'Always open on the formula' }).click();
  await page.getByRole('region', { name: 'What to weigh' }).waitFor({ state: 'detached' });
  await app.saysNothingWrong();
});

test('a tin typed into a copy is there after a reload', async (session) => {
  const { page } = await session.open('phone', { at: at(SAMPLE) });
  await page.getByText('or my tin', { exact: true }).click();
  // The address, in which the copy lives, follows each change within a second or two.
  const changed = async (change, what) => {
    const before = page.url();
    await change();
    await until(() => page.url(), (url) => url !== before, what);
  };
  await changed(() => page.getByRole('combobox', { name: 'Baked in' }).selectOption({ label: 'Round tin' }), 'the address has the tin');
  await changed(() => page.getByRole('textbox', { name: /^Depth/ }).fill('7.5'), 'the address has its depth');
  await page.reload();
  await ready(page);
  await page.getByText('or my tin', { exact: true }).click();
  await holds(page.getByRole('textbox', { name: /^Depth/ }), '7.5');
});

/// In the page: grams of dough that the index holds of a formula.
function doughInIndex(name) {
  return JSON.parse(localStorage.getItem('softcrumb.shelf')).entries.find((entry) => entry.name === name).dough_g;
}

/// The address and the index are each written a second after typing; neither may hold up the other.
test('a copy that is kept between two keys leaves both address and index up to date', async (session) => {
  const { page } = await session.open('phone', { at: at(SAMPLE) });
  const whole = new Formula(page);
  await whole.openWritten();
  const milk = whole.weight('Final <b>dough</b>', 'Whole milk');
  await whole.type(milk, '150');
  await page.getByRole('button', { name: 'Keep it', exact: true }).click();
  const kept = await page.evaluate(doughInIndex, NAME);
  await whole.type(milk, '160');
  await until(() => page.evaluate(doughInIndex, NAME), (grams) => grams > kept, 'the index has the new weight');
  assert.equal(new URL(page.url()).hash, '#formula');
});

const SPOILT = [
  ['cut in half', SAMPLE.slice(0, SAMPLE.length / 2), /cut short or changed/],
  ['one character less', SAMPLE.slice(0, -1), /cut short or changed/],
  ['one character another', `${SAMPLE.slice(0, 40)}${SAMPLE[40] === 'A' ? 'B' : 'A'}${SAMPLE.slice(41)}`, /cut short or changed/],
  ['of a newer release', newer(SAMPLE), /newer release/],
  ['rubbish', 'b%20r!ead', /not a link to a formula/],
  ['nothing', '', /holds no formula/],
  ['far too long', 'A'.repeat(9000), /does not fit|too long|not a link|cut short/],
];

for (const [name, link, answer] of SPOILT) {
  test(`a link that is ${name} is answered in words, and the own formula stands`, async (session) => {
    const { page } = await session.open('phone', { at: at(link) });
    const app = new Formula(page);
    const alert = page.getByRole('alert').filter({ hasText: answer });
    await alert.waitFor();
    assert.equal(await app.name(), 'Lantern Lane chocolate loaf');
    assert.equal(await formulas(page), 4);
    await app.saysNothingWrong();
    await alert.getByRole('button', { name: 'Close' }).click();
    await alert.waitFor({ state: 'hidden' });
    await app.type(app.weight('Final dough', 'Salt'), '9');
    assert.equal(await app.canUndo(), true, 'work goes on');
  });
}

test('a link opened while another formula stands open puts nothing of that at risk', async (session) => {
  const { page } = await session.open('phone');
  const app = new Formula(page);
  await app.type(app.weight('Final dough', 'Salt'), '9.1');
  await page.evaluate((hash) => { location.hash = hash; }, at(SAMPLE));
  await app.notice('This formula came with a link').waitFor();
  assert.equal(await app.name(), NAME);
  await page.goto(session.address);
  await page.reload();
  await ready(page);
  await drawn(page);
  await holds(app.weight('Final dough', 'Salt'), '9.1');
});
