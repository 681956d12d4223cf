//! Cold load: from the first request until the page answers, on a weak phone with a weak signal.

import { median, say } from './numbers.mjs';
import { SLOW_4G, visit } from './visit.mjs';

const RUNS = Number(process.env.SOFTCRUMB_RUNS ?? 15);

export async function cold(browser, { ours, baseline }) {
  const times = { ours: [], baseline: [] };
  for (let run = 0; run < RUNS; run += 1) {
    for (const [name, address, kind] of [['baseline', baseline, 'click'], ['ours', ours, 'type']]) {
      const { context, page } = await visit(browser, address, kind, { processor: 4, network: SLOW_4G });
      times[name].push(await page.evaluate(() => window.noted.ready));
      await context.close();
    }
  }
  const [mine, least] = [median(times.ours), median(times.baseline)];
  return say('cold load to usable, beside the baseline', mine / least, 1.5, ' ×',
    `${mine.toFixed(0)} ms, least ${least.toFixed(0)} ms; medians of ${RUNS}, processor 1/4, slow 4G`);
}
