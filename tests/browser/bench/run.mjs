//! Measures the page beside a minimal page; xtask serves both and passes their addresses.

import { start } from '../browser.mjs';
import { cold } from './cold.mjs';
import { cooling } from './cooling.mjs';
import { input } from './input.mjs';
import { large } from './large.mjs';
import { lighthouse } from './lighthouse.mjs';
import { log } from './log.mjs';
import { places } from './places.mjs';
import { shelf } from './shelf.mjs';
import { work } from './work.mjs';

const pages = { ours: process.env.SOFTCRUMB_ADDRESS, baseline: process.env.SOFTCRUMB_BASELINE, cooling: process.env.SOFTCRUMB_COOLING };
if (!pages.cooling) {
  console.error('Run this by: cargo xtask bench');
  process.exit(2);
}
const measures = pages.ours && pages.baseline ? [cold, input, work, places, shelf, large, log, cooling, lighthouse] : [cooling];
const browser = await start();
let kept = true;
for (const measure of measures) {
  try {
    kept = (await measure(browser, pages)) && kept;
  } catch (trouble) {
    kept = false;
    console.log(`${measure.name}: could not be measured: ${trouble.message.split('\n')[0]}`);
  }
}
await browser.close();
process.exit(kept ? 0 : 1);
