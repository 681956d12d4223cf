//! Input to the next frame: a digit typed into a weight box, all figures following, beside the minimal page's box
//! that one figure follows, and beside a click there.

import { at, median, say } from './numbers.mjs';
import { visit } from './visit.mjs';

const INPUTS = 50;
const BATCHES = 5;

/// Types so many digits, or clicks as often; gives the ms of each to the next frame.
export async function typed(page, kind, count) {
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

/// How many frames after a key still change something: counted in the page.
async function framesPerKey(page) {
  return page.evaluate(async () => {
    const box = window.probed();
    let changed = 0;
    let frames = 0;
    const watch = new MutationObserver(() => { changed += 1; });
    watch.observe(document.body, { childList: true, subtree: true, characterData: true, attributes: true });
    box.value += '1';
    box.dispatchEvent(new InputEvent('input', { bubbles: true }));
    for (let frame = 0; frame < 20; frame += 1) {
      const before = changed;
      await new Promise((done) => requestAnimationFrame(done));
      await new Promise((done) => setTimeout(done));
      if (changed > before) frames += 1;
    }
    watch.disconnect();
    return frames;
  });
}

/// The pages take turns, so that a busy moment of the machine falls on all.
export async function input(browser, { ours, baseline }) {
  const pages = [
    { name: 'click', kind: 'click', ...(await visit(browser, baseline, 'click', { processor: 6 })), times: [] },
    { name: 'box', kind: 'type', ...(await visit(browser, baseline, 'type', { processor: 6 })), times: [] },
    { name: 'ours', kind: 'type', ...(await visit(browser, ours, 'type', { processor: 6 })), times: [] },
  ];
  for (let batch = 0; batch < BATCHES; batch += 1) {
    for (const each of pages) {
      await each.page.bringToFront();
      each.times.push(...(await typed(each.page, each.kind, INPUTS / BATCHES)));
    }
  }
  const changes = await pages[2].page.evaluate(() => window.noted.changes);
  const frames = await framesPerKey(pages[2].page);
  for (const each of pages) await each.context.close();
  const [click, box, mine] = pages.map((each) => each.times);
  const said = (share) => `${at(mine, share).toFixed(1)} ms, least ${at(box, share).toFixed(1)} ms; ${INPUTS} inputs, processor 1/6`;
  const held = [
    say('typing to next frame, median', median(mine) / median(box), 2, ' ×', `${said(0.5)}, up to ${changes} changes at once`),
    say('typing to next frame, 95th in 100', at(mine, 0.95) / at(box, 0.95), 2.5, ' ×', said(0.95)),
    say('frames that a key changes', frames, 2, ''),
  ];
  console.log(`  a click on the minimal page takes ${median(click).toFixed(1)} ms: typing here is ${(median(mine) / median(click)).toFixed(2)} times that`);
  return held.every(Boolean);
}
