//! Keeps every promise in *.spec.mjs, a few at once. `node run.mjs offline size` takes these files only.

import { readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { start } from './browser.mjs';
import { serve } from './host.mjs';
import { Desk } from './launch.mjs';
import { read } from './promises.mjs';

const here = new URL('./', import.meta.url);
const wanted = process.argv.slice(2);
const pictures = process.env.SOFTCRUMB_SHOTS ? ['shots.mjs'] : [];
const files = [...readdirSync(here).filter((name) => name.endsWith('.spec.mjs')).sort(), ...pictures]
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.startsWith(word)));

/// How many promises are kept at once: with two cores, a third is worth its while, because each waits a lot.
const AT_ONCE = Number(process.env.SOFTCRUMB_AT_ONCE ?? Math.min(3, availableParallelism() + 1));
const strays = [];
process.on('unhandledRejection', (trouble) => strays.push(trouble));

const hosted = process.env.SOFTCRUMB_ADDRESS ? undefined : await serve();
const address = process.env.SOFTCRUMB_ADDRESS ?? hosted.address;
const browser = await start();
let passed = 0;
let failed = 0;
for (const file of files) {
  console.log(file);
  await tryAll(await read(new URL(file, here), file));
}
await browser.close();
hosted?.stop();
if (files.length === 0) console.log(`no spec file begins with ${wanted.join(' or ')}`);
console.log(`in ${(performance.now() / 1000).toFixed(0)} s, ${AT_ONCE} at once`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 || passed === 0 ? 1 : 0);

/// Each promise has a browser context of its own, so that several are kept at once; those that take the time are not.
async function tryAll(promises) {
  const waiting = promises.filter((promise) => !promise.alone);
  const next = async () => {
    while (waiting.length > 0) await tryOne(waiting.shift());
  };
  await Promise.all(Array.from({ length: AT_ONCE }, next));
  for (const promise of promises.filter(({ alone }) => alone)) await tryOne(promise);
}

async function tryOne({ name, keep, seconds }) {
  const desk = new Desk(browser, address);
  const begun = performance.now();
  let trouble;
  try {
    await within(seconds, keep(desk));
  } catch (caught) {
    trouble = caught;
  }
  try {
    await desk.leave(!trouble);
  } catch (caught) {
    trouble ??= caught;
  }
  trouble ??= strays.splice(0)[0];
  const took = `${((performance.now() - begun) / 1000).toFixed(1)} s`;
  if (trouble) {
    failed += 1;
    console.log(`  FAILED  ${name} (${took})\n${String(trouble.stack ?? trouble).replace(/^/gm, '      ')}`);
  } else {
    passed += 1;
    console.log(`  kept    ${name} (${took})`);
  }
}

async function within(seconds, work) {
  let timer;
  const late = new Promise((_, reject) => {
    timer = setTimeout(() => reject(new Error(`not done after ${seconds} s`)), seconds * 1000);
  });
  try {
    await Promise.race([work, late]);
  } finally {
    clearTimeout(timer);
  }
}
