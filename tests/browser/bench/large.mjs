//! Typing with a great store: 5,000 formulas on the shelf, and a formula of 200 lines open, beside the first example.

import { readFileSync } from 'node:fs';
import { typed } from './input.mjs';
import { median, say } from './numbers.mjs';
import { fill } from './shelf.mjs';
import { visit } from './visit.mjs';

const COUNT = 5000;
const LINES = 200;
const BATCHES = 5;

/// The sample with a final dough of so many lines in all.
function longFormula(sample) {
  const formula = structuredClone(sample);
  const parts = formula.formula.streams;
  const dough = parts.find((part) => part.kind === 'final');
  const [line] = dough.lines;
  const others = parts.reduce((sum, part) => sum + (part === dough ? 0 : part.lines.length), 0);
  while (dough.lines.length < LINES - others) dough.lines.push({ ...line, mass_g: 5, poured_g: undefined });
  return formula;
}

/// The sample with one part of three lines, so that so many fit into the browser's storage.
function shortFormula(sample) {
  const formula = structuredClone(sample);
  const dough = formula.formula.streams.find((part) => part.kind === 'final');
  dough.lines = dough.lines.slice(0, 3);
  formula.formula.streams = [dough];
  return formula;
}

/// The pages take turns, so that a busy moment of the machine falls on all.
export async function large(browser, { ours }) {
  const sample = JSON.parse(readFileSync(new URL('../../sheet/samples/v1.formula.json', import.meta.url), 'utf8'));
  const formula = shortFormula(sample);
  const pages = [];
  for (const [opened, count] of [[sample, 1], [sample, COUNT], [longFormula(sample), 1]]) {
    const prepare = (page) => page.addInitScript(fill, { formula, count, opened });
    pages.push({ times: [], ...(await visit(browser, ours, 'type', { processor: 6, prepare })) });
  }
  for (let batch = 0; batch < BATCHES; batch += 1) {
    for (const each of pages) {
      await each.page.bringToFront();
      each.times.push(...(await typed(each.page, 'type', 10)));
    }
  }
  const lines = await pages[2].page.locator('main label').filter({ hasText: /, weight$/ }).count();
  for (const each of pages) await each.context.close();
  const [small, shelf, long] = pages.map((each) => median(each.times));
  const note = (time) => `${time.toFixed(1)} ms, small ${small.toFixed(1)} ms; 50 inputs, processor 1/6`;
  const first = say(`typing with ${COUNT} formulas, beside one`, shelf / small, 2, ' ×', note(shelf));
  const second = say(`typing with ${lines} lines, beside the sample's`, long / small, 2, ' ×', note(long));
  return first && second;
}
