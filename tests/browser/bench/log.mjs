//! A log of 500 bakes: the place Day opened with it, beside the same place with no bake, on a quarter of the processor.

import { readFileSync } from 'node:fs';
import { median, say } from './numbers.mjs';
import { visit } from './visit.mjs';

const COUNT = 500;
const BUDGET = 100;
const TURNS = 9;

/// Runs in the page before it loads: keeps a log of so many bakes.
function fill({ bake, count }) {
  if (!count || localStorage.getItem('softcrumb.log')) return;
  const letters = 'abcdefghijklmnopqrstuvwxyz234567';
  const bakes = Array.from({ length: count }, (_, number) =>
    ({ ...bake, id: `zz${letters[number >> 5]}${letters[number & 31]}`, began_ms: bake.began_ms + number * 3.6e6 }));
  localStorage.setItem('softcrumb.log', JSON.stringify({ softcrumb: 'log', version: 1, bakes }));
}

/// Runs in the page: taps a place in the bar; gives how long it took until the task after the frame in which `holds`.
function openPlace([place, holds]) {
  const link = [...document.querySelectorAll('nav a')].find((one) => one.textContent === place);
  const there = new Function(`return ${holds}`);
  return new Promise((done) => {
    const begun = performance.now();
    link.click();
    const look = () => requestAnimationFrame(() => {
      if (!there()) { look(); return; }
      const channel = new MessageChannel();
      channel.port1.onmessage = () => done(performance.now() - begun);
      channel.port2.postMessage(0);
    });
    look();
  });
}

export async function log(browser, { ours }) {
  const sample = new URL('../../sheet/samples/v1.log.json', import.meta.url);
  const [bake] = JSON.parse(readFileSync(sample, 'utf8')).bakes;
  const times = { full: [], empty: [] };
  const row = "[...document.querySelectorAll('main .answer summary')].find((one) => one.querySelector('h2').textContent === 'Log')";
  const shown = "document.querySelector('main .log')";
  const holds = { full: `${shown} && document.querySelectorAll('main .log summary').length >= 40`, empty: shown };
  for (const [name, count] of [['full', COUNT], ['empty', 0]]) {
    const prepare = (page) => page.addInitScript(fill, { bake, count });
    const { page, context } = await visit(browser, ours, 'type', { processor: 4, prepare });
    // The first visit loads the place itself, which is not part of the log's time; its row is then open at each visit.
    await page.evaluate(openPlace, ['Day', row]);
    await page.evaluate((find) => new Function(`return ${find}`)().click(), row);
    await page.evaluate(openPlace, ['Formula', "document.querySelector('main .line')"]);
    for (let turn = 0; turn <= TURNS; turn += 1) {
      const took = await page.evaluate(openPlace, ['Day', holds[name]]);
      if (turn > 0) times[name].push(took);
      await page.evaluate(openPlace, ['Formula', "document.querySelector('main .line')"]);
      await page.waitForTimeout(100);
    }
    await context.close();
  }
  const [full, empty] = [median(times.full), median(times.empty)];
  return say(`log of ${COUNT} bakes opens, beyond an empty log`, full - empty, BUDGET, ' ms',
    `Day with it ${full.toFixed(0)} ms, without ${empty.toFixed(0)} ms; medians of ${TURNS}, processor 1/4`);
}
