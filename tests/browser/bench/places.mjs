//! Opening a place: from the tap in the bar to the task after the frame that shows the place, on a weak phone.

import { at, median, say } from './numbers.mjs';
import { visit } from './visit.mjs';

const PLACES = ['Batch', 'Heat', 'Chocolate', 'Day', 'Formula'];
const ROUNDS = 15;
const BUDGET = 100;

/// Runs in the page: taps the place and gives the ms until it has been drawn.
const open = (name) => new Promise((done) => {
  const link = [...document.querySelectorAll('nav a')].find((one) => one.textContent === name);
  const begun = performance.now();
  const look = () => requestAnimationFrame(() => {
    const main = document.querySelector('main');
    if (main.querySelector('h1')?.textContent !== name || !main.querySelector('section')) return look();
    const channel = new MessageChannel();
    channel.port1.onmessage = () => done(performance.now() - begun);
    channel.port2.postMessage(0);
    return undefined;
  });
  link.click();
  look();
});

export async function places(browser, { ours }) {
  const { context, page } = await visit(browser, ours, 'type', { processor: 4 });
  await page.waitForTimeout(3000);
  const times = Object.fromEntries(PLACES.map((place) => [place, []]));
  for (let round = 0; round <= ROUNDS; round += 1) {
    for (const place of PLACES) {
      times[place].push(await page.evaluate(open, place));
      await page.waitForTimeout(600);
    }
  }
  await context.close();
  return PLACES.map((place) => {
    const [first, ...later] = times[place];
    return say(`opening ${place}, median`, median(later), BUDGET, ' ms',
      `95th in 100 ${at(later, 0.95).toFixed(0)} ms; the first time, with loading, ${first.toFixed(0)} ms; ${ROUNDS} taps, processor 1/4`);
  }).every(Boolean);
}
