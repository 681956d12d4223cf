//! Twelve hours of cooling, run in the browser on a weak phone's processor: how long one run takes.

import { median, say } from './numbers.mjs';
import { visit } from './visit.mjs';

const TAPS = 15;
/// What one run may take, ms: a frame.
const BUDGET = 1000 / 60;

export async function cooling(browser, { cooling }) {
  const { context, page } = await visit(browser, cooling, 'click', { processor: 6 });
  const took = await page.evaluate((taps) => {
    const button = document.querySelector('button');
    const times = Number(button.dataset.times);
    return Array.from({ length: taps }, () => {
      const begun = performance.now();
      button.click();
      return (performance.now() - begun) / times;
    });
  }, TAPS);
  const middle = await page.locator('main p').innerText();
  await context.close();
  const centre = Number(middle.match(/Some\((\d[\d.]*)\)/)?.[1]);
  if (!Number.isFinite(centre)) throw new Error(`nothing was cooled: ${middle}`);
  console.log(`12 h of cooling in the browser: the middle is at ${centre.toFixed(6)} °C`);
  return say('12 h of cooling, one run in the browser', median(took), Number(BUDGET.toFixed(1)), ' ms', `median of ${TAPS}, processor 1/6`);
}
