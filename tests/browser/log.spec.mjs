//! The log: a small photo with a bake, the log out to a file and back in, and files that would do harm.

import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { axe, breaches, ready, shot } from './launch.mjs';
import { plain } from './pages/batch.mjs';
import { onFriday } from './pages/day.mjs';
import { all, put } from './pages/storage.mjs';
import { counts, until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// A picture made in the browser: noise, which hardly packs, so that it must be drawn down.
function picture(page, wide, high, kind = 'image/png') {
  return page.evaluate(async ([wide, high, kind]) => {
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [wide, high];
    const context = canvas.getContext('2d');
    const image = context.createImageData(wide, high);
    let seed = 7;
    for (let at = 0; at < image.data.length; at += 1) {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      image.data[at] = at % 4 === 3 ? 255 : seed >> 16;
    }
    context.putImageData(image, 0, 0);
    const blob = await new Promise((done) => { canvas.toBlob(done, kind, 0.95); });
    return [...new Uint8Array(await blob.arrayBuffer())];
  }, [wide, high, kind]).then((bytes) => Buffer.from(bytes));
}

/// A log of one bake, opened.
async function withBake(session, screen = 'phone', more = {}) {
  const { page, day } = await onFriday(session, screen, more);
  await day.start();
  await day.next();
  await day.stop();
  await day.openRows();
  await day.bakes.locator('summary').first().click();
  return { page, day };
}

const file = (name, mimeType, buffer) => ({ name, mimeType, buffer });
const choose = (day) => day.log.getByLabel('Choose a photo');
const photos = async (page) => Object.entries(await all(page)).filter(([key]) => key.startsWith('softcrumb.photo.'));

test('a photo is drawn down, kept with the bake, shown with words for those who do not see it, and taken away', async (session) => {
  const { page, day } = await withBake(session);
  assert.equal(await day.log.getByLabel('Take a photo').getAttribute('capture'), 'environment');
  await choose(day).setInputFiles(file('bread.png', 'image/png', await picture(page, 1600, 1200)));
  const shown = day.log.getByRole('img', { name: /Photo of “Lantern Lane chocolate loaf”, baked Fri 27 March/ });
  await shown.waitFor();
  const size = await shown.evaluate((image) => [image.naturalWidth, image.naturalHeight]);
  assert.ok(Math.max(...size) <= 480 && Math.abs(size[0] / size[1] - 4 / 3) < 0.01, size.join());
  const [[, text]] = await photos(page);
  assert.match(text, /^data:image\/jpeg;base64,/);
  assert.ok(text.length <= 80_000, `${text.length} characters`);
  await shot(page, 'log-photo-phone');
  assert.deepEqual(await axe(page), []);
  assert.deepEqual(await breaches(page), []);
  await page.reload();
  await ready(page);
  await day.openRows();
  await day.bakes.locator('summary').first().click();
  await shown.waitFor();
  await day.log.getByRole('button', { name: 'Remove the photo' }).click();
  await shown.waitFor({ state: 'detached' });
  await until(() => photos(page), (left) => left.length === 0, 'the photo is gone');
});

test('a small photo of any kind the browser knows is not made larger', async (session) => {
  const { page, day } = await withBake(session);
  for (const kind of ['image/jpeg', 'image/webp']) {
    await choose(day).setInputFiles(file('bread', kind, await picture(page, 90, 200, kind)));
    const size = await until(
      () => day.log.getByRole('img').evaluateAll((all) => all.map((image) => [image.naturalWidth, image.naturalHeight]).flat()),
      (size) => size.length === 2 && size[0] > 0, 'it is shown');
    assert.deepEqual(size, [90, 200]);
    await day.log.getByRole('button', { name: 'Remove the photo' }).click();
  }
});

const HOSTILE = [
  ['a text', file('a.txt', 'text/plain', Buffer.from('hello')), /not a picture/],
  ['a text that says it is a picture', file('a.jpg', 'image/jpeg', Buffer.from('<script>alert(1)</script>')), /cannot be opened here/],
  ['nothing', file('a.png', 'image/png', Buffer.alloc(0)), /cannot be opened here/],
  ['a drawing with a script in it', file('a.svg', 'image/svg+xml', Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"><script>document.title=1</script></svg>')), /cannot be opened here/],
  ['31 MB', file('a.jpg', 'image/jpeg', Buffer.alloc(31_000_000, 1)), /31.MB, more than the 30.MB/],
];

test('what is no photo is answered in words, and what is there stays', async (session) => {
  const { page, day } = await withBake(session);
  const cut = (await picture(page, 300, 300)).subarray(0, 200);
  await choose(day).setInputFiles(file('bread.png', 'image/png', await picture(page, 300, 300)));
  await day.log.getByRole('img').waitFor();
  const kept = await photos(page);
  for (const [what, wrong, words] of [...HOSTILE, ['a picture cut short', file('a.png', 'image/png', cut), /cannot be opened here/]]) {
    await choose(day).setInputFiles(wrong, { timeout: 60_000 });
    await until(async () => plain(await day.log.innerText()), (said) => words.test(said), what);
    assert.deepEqual(await photos(page), kept, `${what}: the photo that was there stays`);
    // Another answer in between, so that the next is waited for.
    await choose(day).setInputFiles(file('a.csv', 'text/csv', Buffer.from('a')));
    await until(async () => plain(await day.log.innerText()), (said) => !words.test(said) || what === 'a text', `${what}: answered anew`);
  }
  assert.ok(!/^1$/.test(await page.title()));
}, { seconds: 120 });

test('where there is no room for another photo it is said, and nothing else is lost', async (session) => {
  const { page, day } = await withBake(session);
  for (let more = 0; more < 24; more += 1) await put(page, `softcrumb.photo.zzz${more}`, `data:image/jpeg;base64,${'A'.repeat(70_000)}`);
  const before = await all(page);
  await choose(day).setInputFiles(file('bread.png', 'image/png', await picture(page, 800, 800)));
  await until(async () => plain(await day.log.innerText()), (said) => /no room for another photo/.test(said), 'it is said');
  assert.deepEqual(await all(page), before);
  await counts(day.log.getByRole('img'), 0);
});

const save = async (page, name) => {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name }).click();
  return readFile(await (await coming).path());
};
const takeIn = (day) => day.log.getByLabel('Import a log from a file');
const says = (day, words) => until(async () => plain(await day.log.innerText()), (said) => words.test(said), `${words}`);

test('the log goes out to a file and comes back elsewhere, photo and all, and twice is not doubled', async (session) => {
  const { page, day } = await withBake(session);
  await choose(day).setInputFiles(file('bread.png', 'image/png', await picture(page, 300, 300)));
  await day.log.getByRole('img').waitFor();
  const text = await save(page, 'Save the log to a file');
  const kept = await all(page);
  const other = await onFriday(session);
  await takeIn(other.day).setInputFiles(file('log.json', 'application/json', text));
  await says(other.day, /One bake was imported/);
  const there = await all(other.page);
  assert.equal(there['softcrumb.log'], kept['softcrumb.log'], 'the same log, to the letter');
  assert.deepEqual(await photos(other.page), await photos(page));
  await takeIn(other.day).setInputFiles(file('log.json', 'application/json', text));
  await says(other.day, /No bake of this file is new here\..*One was there already/s);
  assert.equal((await all(other.page))['softcrumb.log'], kept['softcrumb.log']);
  await counts(other.day.bakes, 1);
});

test('a file that is damaged, newer, another kind or too large changes nothing and is told', async (session) => {
  const { page, day } = await withBake(session);
  const saved = (await save(page, 'Save the log to a file')).toString();
  const before = await all(page);
  const wrong = [
    [saved.slice(0, 150), /cut short or changed/], ['', /nothing in the file/], ['{"a":1}', /Choose a file that was saved here/],
    [saved.replace('"version":1', '"version":9'), /newer release/], [saved.replace('"log"', '"formulas"'), /something else/],
    [saved.replace(/"began_ms":\d+/, '"began_ms":"x"').replace(/"id":"[a-z2-7]+"/, '"id":"abcabc"'), /It stands at “bakes\[0\]\.began_ms”/],
    ['['.repeat(100_000), /cut short or changed/],
  ];
  for (const [text, words] of wrong) {
    await takeIn(day).setInputFiles(file('log.json', 'application/json', Buffer.from(text)));
    await says(day, words);
  }
  await takeIn(day).setInputFiles(file('log.json', 'application/json', Buffer.alloc(13_000_000, 32)));
  await says(day, /13.MB, more than the 12.MB/);
  assert.deepEqual(await all(page), before);
});

test('a bake taken out of the log comes back with its photo', async (session) => {
  const { page, day } = await withBake(session);
  await choose(day).setInputFiles(file('bread.png', 'image/png', await picture(page, 300, 300)));
  await day.log.getByRole('img').waitFor();
  const before = await all(page);
  await day.log.getByRole('button', { name: 'Remove from the log' }).click();
  await until(() => photos(page), (left) => left.length === 0, 'the photo is gone');
  await page.getByRole('button', { name: 'Restore the removed bake' }).click();
  assert.deepEqual(await all(page), before);
});

test('a summary is read on a phone line by line, and nothing of it is cut', async (session) => {
  const { page, day } = await onFriday(session);
  await day.start();
  await day.goTo('Make Scald');
  await day.leave();
  await page.getByRole('button', { name: 'Stop here and save to the log' }).click();
  const summary = page.getByRole('region', { name: 'Saved to the log' });
  await summary.waitFor();
  const rows = summary.getByRole('row');
  assert.ok((await rows.count()) >= 4, 'it is a table for those who hear it');
  const cells = await summary.locator('tbody tr').evaluateAll((rows) => rows.map((row) => {
    const boxes = [...row.children].map((cell) => cell.getBoundingClientRect());
    const name = boxes[0];
    const lines = name.height / Number.parseFloat(getComputedStyle(row.children[0]).lineHeight);
    const words = [...row.querySelectorAll('td')].map((cell) => getComputedStyle(cell, '::before').content);
    return { lines, words, cut: [...row.children].some((cell) => cell.scrollWidth > cell.clientWidth + 1), right: Math.max(...boxes.map((box) => box.right)) };
  }));
  for (const { lines, words, cut, right } of cells) {
    assert.ok(lines < 1.5, 'a name is one line');
    assert.deepEqual(words, ['"predicted"', '"happened"', '"next bake"'], 'each figure says what it is');
    assert.equal(cut, false);
    assert.ok(right <= 360);
  }
  assert.deepEqual(await breaches(page), []);
});

test('of a long log each bake is found, newest first, and none is cut on a phone', async (session) => {
  const { page, day } = await withBake(session);
  // A bake a week for a year, the oldest in the spring before.
  const names = await page.evaluate(() => {
    const log = JSON.parse(localStorage.getItem('softcrumb.log'));
    const [bake] = log.bakes;
    const week = 7 * 24 * 3600 * 1000;
    const letters = 'abcdefghijklmnopqrstuvwxyz';
    log.bakes = Array.from({ length: 53 }, (_, at) => {
      const past = (52 - at) * week;
      const id = `${bake.id.slice(0, -2)}${letters[Math.floor(at / 26)]}${letters[at % 26]}`;
      const steps = (bake.steps ?? []).map((step) => ({ ...step, began_ms: step.began_ms - past, ...(step.ended_ms ? { ended_ms: step.ended_ms - past } : {}) }));
      return { ...bake, id, name: `Loaf of the long seeded evening class, number ${at + 1}`, began_ms: bake.began_ms - past, steps };
    });
    localStorage.setItem('softcrumb.log', JSON.stringify(log));
    return log.bakes.map(({ name }) => name).reverse();
  });
  await page.reload();
  await ready(page);
  await day.openRows();
  const shown = () => day.bakes.locator('.name').allInnerTexts();
  assert.deepEqual(await shown(), names.slice(0, 40));
  await page.getByRole('button', { name: 'Show older bakes' }).click();
  await until(() => shown(), (all) => all.length === 53, 'the rest is one tap away');
  assert.deepEqual(await shown(), names);
  const wide = await day.bakes.locator('summary').evaluateAll((rows) => rows.map((row) => {
    const boxes = [...row.children].map((part) => part.getBoundingClientRect());
    return { cut: [...row.children].some((part) => part.scrollWidth > part.clientWidth + 1), right: Math.max(...boxes.map(({ right }) => right)), high: row.getBoundingClientRect().height };
  }));
  for (const { cut, right, high } of wide) assert.ok(!cut && right <= 360 && high >= 44, JSON.stringify({ cut, right, high }));
  const dates = await day.bakes.locator('.quiet').allInnerTexts();
  assert.equal(new Set(dates).size, 53, 'a date of last year says its year');
});
