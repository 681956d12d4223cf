//! Lighthouse's categories for a phone: on the first example, and on a formula that came as a link.

import { path } from '../browser.mjs';
import { LINK } from './link.mjs';
import { median, say } from './numbers.mjs';
import { visit } from './visit.mjs';

const RUNS = Number(process.env.SOFTCRUMB_RUNS ?? 5);
const PERFORMANCE = 95;
const CATEGORIES = ['accessibility', 'best-practices', 'seo'];
const BLOCKING_MS = 200;

/// One audit in a browser of its own.
async function audited(address) {
  const [{ default: audit }, { launch }] = await Promise.all([import('lighthouse'), import('chrome-launcher')]);
  const flags = ['--headless=new', '--disable-gpu', ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])];
  const chrome = await launch({ chromePath: path(), chromeFlags: flags, logLevel: 'silent' });
  try {
    const { lhr } = await audit(address, { port: chrome.port, logLevel: 'silent', output: 'json' });
    return lhr;
  } finally {
    chrome.kill();
  }
}

/// Says the points of one page, medians of some runs.
async function page(name, address) {
  const runs = [];
  for (let run = 0; run < RUNS; run += 1) runs.push(await audited(address));
  const points = (category) => median(runs.map((run) => Math.round((run.categories[category]?.score ?? 0) * 100)));
  const time = (audit) => median(runs.map((run) => run.audits[audit].numericValue));
  const missed = (category, wanted) => {
    const kept = points(category) >= wanted;
    console.log(`${`Lighthouse, ${name}: ${category}`.padEnd(44)} ${String(points(category)).padStart(11)}   at least ${wanted}  ${kept ? 'ok' : 'UNDER'}`);
    return kept;
  };
  const note = `first picture ${time('first-contentful-paint').toFixed(0)} ms, largest ${time('largest-contentful-paint').toFixed(0)} ms, medians of ${RUNS}`;
  return [
    missed('performance', PERFORMANCE),
    ...CATEGORIES.map((category) => missed(category, 100)),
    say(`Lighthouse, ${name}: blocking`, time('total-blocking-time'), BLOCKING_MS, ' ms', note),
  ].every(Boolean);
}

/// What is measured is a formula, and no notice that the link is none.
async function opens(browser, address) {
  const { page: tab, context } = await visit(browser, address, null);
  await tab.getByRole('region', { name: 'What to weigh' }).waitFor();
  await context.close();
}

export async function lighthouse(browser, { ours }) {
  const link = `${ours}#loaf=${LINK}`;
  await opens(browser, link);
  const first = await page('example', ours);
  const second = await page('link', link);
  return first && second;
}
