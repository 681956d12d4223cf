//! Input to the next frame: a digit typed into a weight box, all figures following, beside a click on the baseline page.

import { at, median, say } from './numbers.mjs';
import { visit } from './visit.mjs';

const INPUTS = 50;
const BATCHES = 5;

async function inputs(page, kind, count) {
  await page.evaluate(() => { window.noted.frames = []; });
  if (kind === 'type') await page.evaluate(() => window.probed().focus());
  for (let input = 0; input < count; input += 1) {
    if (kind === 'click') {
      const place = await page.locator('button').first().boundingBox();
      await page.mouse.click(place.x + place.width / 2, place.y + place.height / 2);
    } else {
      await page.evaluate(() => { const box = window.probed(); box.setSelectionRange(box.value.length, box.value.length); });
      await page.keyboard.press(String((input % 9) + 1));
    }
    await page.waitForFunction((wanted) => window.noted.frames.length >= wanted, input + 1, { polling: 20 });
    if (kind === 'type') await page.keyboard.press('Backspace');
    await page.waitForTimeout(120);
  }
  return page.evaluate(() => window.noted.frames);
}

/// The two pages take turns, so that a busy moment of the machine falls on both.
export async function input(browser, { ours, baseline }) {
  const pages = [
    { name: 'baseline', kind: 'click', ...(await visit(browser, baseline, 'click', { processor: 6 })), times: [] },
    { name: 'ours', kind: 'type', ...(await visit(browser, ours, 'type', { processor: 6 })), times: [] },
  ];
  for (let batch = 0; batch < BATCHES; batch += 1) {
    for (const each of pages) {
      await each.page.bringToFront();
      each.times.push(...(await inputs(each.page, each.kind, INPUTS / BATCHES)));
    }
  }
  const changes = await pages[1].page.evaluate(() => window.noted.changes);
  for (const each of pages) await each.context.close();
  const [least, mine] = pages.map((each) => each.times);
  const said = (share) => `${at(mine, share).toFixed(1)} ms, least ${at(least, share).toFixed(1)} ms; ${INPUTS} inputs, processor 1/6`;
  const first = say('input to next frame, median', median(mine) / median(least), 1.5, ' ×', `${said(0.5)}, up to ${changes} changes at once`);
  const second = say('input to next frame, 95th in 100', at(mine, 0.95) / at(least, 0.95), 2, ' ×', said(0.95));
  return first && second;
}
