//! A shelf of 1,000 formulas: opening it, and opening one of them, in frames more than the baseline page's click.

import { readFileSync } from 'node:fs';
import { median, say } from './numbers.mjs';
import { visit } from './visit.mjs';

const COUNT = 1000;
const FRAME = 1000 / 60;
const FRAMES = 6;
const TURNS = 7;

/// Runs in the page before it loads: fills the shelf with `count` formulas. The first one is `opened`, and is the one
/// that was open last, where it is given.
export function fill({ formula, count, opened }) {
  if (localStorage.getItem('softcrumb.shelf')) return;
  const letters = 'abcdefghijklmnopqrstuvwxyz234567';
  const entries = [];
  for (let number = 0; number < count; number += 1) {
    const id = `z${letters[number >> 10]}${letters[(number >> 5) & 31]}${letters[number & 31]}`;
    const name = `Bread ${String(number + 1).padStart(4, '0')}`;
    const stored = number === 0 && opened ? opened : formula;
    localStorage.setItem(`softcrumb.formula.${id}`, JSON.stringify({ ...stored, name }));
    entries.push({ id, name, dough_g: 900, changed_ms: 1.76e12 + number, place: 'shelf', since_ms: 1.76e12 });
  }
  localStorage.setItem('softcrumb.shelf', JSON.stringify({ softcrumb: 'shelf', version: 1, entries }));
  if (opened) localStorage.setItem('softcrumb.open', entries[0].id);
}

/// Runs in the page: from the next tap to the task after the frame in which `done` holds.
function timeNextTap(done) {
  const holds = new Function(`return ${done}`);
  window.took = new Promise((resolve) => {
    addEventListener('click', (event) => {
      const look = () => requestAnimationFrame(() => {
        if (!holds()) { look(); return; }
        const channel = new MessageChannel();
        channel.port1.onmessage = () => resolve(performance.now() - event.timeStamp);
        channel.port2.postMessage(0);
      });
      look();
    }, { capture: true, once: true });
  });
}

async function timed(page, done, tap) {
  await page.evaluate(timeNextTap, done);
  await tap();
  const late = new Promise((_, reject) => { setTimeout(() => reject(new Error(`30 s after the tap, not yet: ${done}`)), 30_000).unref(); });
  return Promise.race([page.evaluate(() => window.took), late]);
}

export async function shelf(browser, { ours, baseline }) {
  const sample = new URL('../../sheet/samples/v1.formula.json', import.meta.url);
  const formula = JSON.parse(readFileSync(sample, 'utf8'));
  const prepare = (page) => page.addInitScript(fill, { formula, count: COUNT });
  const least = await visit(browser, baseline, 'click');
  const mine = await visit(browser, ours, 'type', { prepare });
  const times = { least: [], shelf: [], one: [] };
  for (let turn = 0; turn < TURNS; turn += 1) {
    await least.page.bringToFront();
    times.least.push(await timed(least.page, 'true', () => least.page.locator('button').click()));
    await mine.page.bringToFront();
    const open = "document.querySelector('dialog[open]')";
    times.shelf.push(await timed(mine.page, `/Bread \\d{4}/.test(${open}?.textContent ?? '')`,
      () => mine.page.getByRole('button', { name: /^shelf/i }).first().click()));
    const row = mine.page.locator('dialog[open] button.pick').nth(10 + turn);
    const name = (await row.textContent()).match(/Bread \d{4}/)[0];
    times.one.push(await timed(mine.page, `!${open} && document.querySelector('header').textContent.includes('${name}')`, () => row.click()));
  }
  await least.context.close();
  await mine.context.close();
  const more = (name) => (median(times[name]) - median(times.least)) / FRAME;
  const note = (name) => `${median(times[name]).toFixed(0)} ms, least ${median(times.least).toFixed(0)} ms; full speed`;
  const first = say(`shelf of ${COUNT} opens, beyond the baseline`, more('shelf'), FRAMES, ' frames', note('shelf'));
  const second = say(`one of ${COUNT} opens, beyond the baseline`, more('one'), FRAMES, ' frames', note('one'));
  return first && second;
}
