//! Cold load on a weak phone with a weak signal: until the first picture, until the page answers, and until a link shows
//! its weights; and the bytes that have come over the network once the page has settled.

import { LINK } from './link.mjs';
import { median, say } from './numbers.mjs';
import { SLOW_4G, visit } from './visit.mjs';

const RUNS = Number(process.env.SOFTCRUMB_RUNS ?? 15);
/// Bytes of a page that has settled, in KB of 1,000.
const SETTLED_KB = 300;
/// How long a link may take to its weights, as a share of the baseline's cold load: they need three times its bytes.
const WEIGHTS = 3;

/// Runs in the page: when something was first painted, when the largest picture was, and when it answered.
const noted = () => new Promise((done) => {
  const first = performance.getEntriesByName('first-contentful-paint')[0]?.startTime ?? 0;
  new PerformanceObserver((list) => {
    done({ first, largest: list.getEntries().at(-1).startTime, ready: window.noted.ready });
  }).observe({ type: 'largest-contentful-paint', buffered: true });
});

export async function cold(browser, { ours, baseline }) {
  const rows = { ours: [], baseline: [] };
  for (let run = 0; run < RUNS; run += 1) {
    for (const [name, address, kind] of [['baseline', baseline, 'click'], ['ours', ours, 'type']]) {
      const { context, page } = await visit(browser, address, kind, { processor: 4, network: SLOW_4G });
      rows[name].push(await page.evaluate(noted));
      await context.close();
    }
  }
  const of = (name, what) => median(rows[name].map((row) => row[what]));
  const beside = (what) => `${of('ours', what).toFixed(0)} ms, least ${of('baseline', what).toFixed(0)} ms; medians of ${RUNS}, processor 1/4, slow 4G`;
  const compared = (said, what, budget) => say(said, of('ours', what) / of('baseline', what), budget, ' ×', beside(what));
  return [
    compared('first picture, beside the baseline', 'first', 1.2),
    compared('largest picture, beside the baseline', 'largest', 1.2),
    compared('cold load to usable, beside the baseline', 'ready', 1.5),
    await weights(browser, ours, of('baseline', 'ready')),
    await settled(browser, ours),
  ].every(Boolean);
}

/// Until what is to be weighed for a link is on the screen.
async function weights(browser, address, least) {
  const times = [];
  for (let run = 0; run < RUNS; run += 1) {
    const { context, page } = await visit(browser, `${address}#loaf=${LINK}`, null, { processor: 4, network: SLOW_4G, answers: shown });
    times.push(await page.evaluate(() => performance.getEntriesByName('weights')[0].startTime));
    await context.close();
  }
  const time = median(times);
  return say('weights of a link, beside the baseline', time / least, WEIGHTS, ' ×', `${time.toFixed(0)} ms, least ${least.toFixed(0)} ms; medians of ${RUNS}`);
}

/// Runs in the page: whether the weights are there; notes when.
const shown = () => document.querySelector('.visit .weights') && (performance.getEntriesByName('weights')[0] ?? performance.mark('weights'));

/// What a visitor who only looks has loaded once nothing more comes for three seconds; the files that are kept for
/// offline are not among them.
async function settled(browser, address) {
  let bytes = 0;
  let latest = performance.now();
  const prepare = async (page) => {
    const session = await page.context().newCDPSession(page);
    await session.send('Network.enable');
    session.on('Network.loadingFinished', ({ encodedDataLength }) => {
      bytes += encodedDataLength;
      latest = performance.now();
    });
  };
  const { context, page } = await visit(browser, address, null, { prepare });
  while (performance.now() - latest < 3000) await page.waitForTimeout(200);
  await context.close();
  return say('loaded once settled', bytes / 1000, SETTLED_KB, ' KB');
}
