//! Runs the tests of *.spec.mjs, a few at once. `node run.mjs offline size` takes these files only.

import { readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { start } from './browser.mjs';
import { serve } from './host.mjs';
import { Session } from './launch.mjs';
import { read } from './registry.mjs';

const here = new URL('./', import.meta.url);
const wanted = process.argv.slice(2);
const pictures = process.env.SOFTCRUMB_SHOTS ? ['shots.mjs'] : [];
const files = [...readdirSync(here).filter((name) => name.endsWith('.spec.mjs')).sort(), ...pictures]
  .filter((name) => wanted.length === 0 || wanted.some((word) => name.startsWith(word)));

/// How many tests run at once: on two cores a third one pays, because each waits a lot.
const AT_ONCE = Number(process.env.SOFTCRUMB_AT_ONCE ?? Math.min(3, availableParallelism() + 1));
const rejections = [];
process.on('unhandledRejection', (error) => rejections.push(error));

const hosted = process.env.SOFTCRUMB_ADDRESS ? undefined : await serve();
const address = process.env.SOFTCRUMB_ADDRESS ?? hosted.address;
const browser = await start();
let passed = 0;
let failed = 0;
for (const file of files) {
  console.log(file);
  await tryAll(await read(new URL(file, here)));
}
await browser.close();
hosted?.stop();
if (files.length === 0) console.log(`no spec file begins with ${wanted.join(' or ')}`);
console.log(`in ${(performance.now() / 1000).toFixed(0)} s, ${AT_ONCE} at once`);
console.log(`${passed} passed, ${failed} failed`);
process.exit(failed > 0 || passed === 0 ? 1 : 0);

/// Each test has browser contexts of its own, so that several run at once; those that measure time run alone.
async function tryAll(tests) {
  const waiting = tests.filter((test) => !test.alone);
  const next = async () => {
    while (waiting.length > 0) await tryOne(waiting.shift());
  };
  await Promise.all(Array.from({ length: AT_ONCE }, next));
  for (const test of tests.filter(({ alone }) => alone)) await tryOne(test);
}

async function tryOne({ name, run, seconds }) {
  const session = new Session(browser, address);
  const begun = performance.now();
  let error;
  try {
    await within(seconds, run(session));
  } catch (caught) {
    error = caught;
  }
  try {
    await session.leave(!error);
  } catch (caught) {
    error ??= caught;
  }
  error ??= rejections.splice(0)[0];
  const took = `${((performance.now() - begun) / 1000).toFixed(1)} s`;
  if (error) {
    failed += 1;
    console.log(`  FAILED  ${name} (${took})\n${String(error.stack ?? error).replace(/^/gm, '      ')}`);
  } else {
    passed += 1;
    console.log(`  passed  ${name} (${took})`);
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
