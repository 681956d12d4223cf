//! The page measured beside the least page there can be; both are served already, xtask says where.

import { start } from '../browser.mjs';
import { cold } from './cold.mjs';
import { input } from './input.mjs';
import { shelf } from './shelf.mjs';

const pages = { ours: process.env.SOFTCRUMB_ADDRESS, floor: process.env.SOFTCRUMB_FLOOR };
if (!pages.ours || !pages.floor) {
  console.error('Run this by: cargo xtask bench');
  process.exit(2);
}
const browser = await start();
let kept = true;
for (const measure of [cold, input, shelf]) {
  try {
    kept = (await measure(browser, pages)) && kept;
  } catch (trouble) {
    kept = false;
    console.log(`${measure.name}: could not be measured: ${trouble.message.split('\n')[0]}`);
  }
}
await browser.close();
process.exit(kept ? 0 : 1);
