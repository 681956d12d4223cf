//! Work before the frame: what the page computes between a key and the next frame, at full speed, in each place.

import { at, median, say } from './numbers.mjs';
import { visit } from './visit.mjs';

const KEYS = 30;
const BUDGET = 4;
const PLACES = ['Formula', 'Batch', 'Heat', 'Chocolate', 'Day'];

/// Runs in the page, an even count of times, so that the box ends as it began: types into the first number box of the open place; gives the ms of script of each key, and of
/// the callbacks of the frame after it.
async function keys(count) {
  const box = document.querySelector('main input[inputmode="decimal"]');
  if (!box) return null;
  const was = box.value;
  // The last digit becomes its neighbour: a value that a baker would type.
  const changed = was.slice(0, -1) + (Number(was.at(-1)) + (was.endsWith('9') ? -1 : 1));
  const times = [];
  for (let key = 0; key < count; key += 1) {
    box.value = key % 2 ? was : changed;
    const begun = performance.now();
    box.dispatchEvent(new InputEvent('input', { bubbles: true }));
    // Effects run in microtasks, some of them queued by others; a task of its own could fall behind the frame.
    for (let turn = 0; turn < 50; turn += 1) await null;
    times.push(performance.now() - begun);
    await new Promise((done) => setTimeout(done, 120));
  }
  return times;
}

/// Opens rows of the place, the first one first, until there is a box to type into.
async function toBox(page) {
  for (const row of await page.locator('main .answer > details > summary').all()) {
    if (await page.locator('main input[inputmode="decimal"]').count()) return;
    await row.click();
    await page.waitForTimeout(300);
  }
}

export async function work(browser, { ours }) {
  const { page, context } = await visit(browser, ours, 'type');
  let held = true;
  for (const place of PLACES) {
    await page.evaluate((name) => [...document.querySelectorAll('nav a')].find((one) => one.textContent === name).click(), place);
    await page.waitForTimeout(2500);
    await toBox(page);
    // The first keys compile what has not run yet.
    await page.evaluate(keys, 6);
    const times = await page.evaluate(keys, KEYS);
    if (!times) continue;
    held = say(`work of a key before the frame, ${place}`, median(times), BUDGET, ' ms',
      `95th in 100 ${at(times, 0.95).toFixed(1)} ms; ${KEYS} keys, full speed`) && held;
  }
  await context.close();
  return held;
}
