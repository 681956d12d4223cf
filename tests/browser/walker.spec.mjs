//! Nothing that can be pressed breaks: every control of every place and dialog is pressed, each from a fresh state.
//!
//! The everyday run presses each kind of control once; into a box it types one of a good value, a bad one and none. SOFTCRUMB_WALK=all presses every control from every start;
//! words such as SOFTCRUMB_WALK=all,phone,trial,Day take those sizes, starts and places only.

import assert from 'node:assert/strict';
import { test } from './registry.mjs';
import { grouped, Plan } from './walker/plan.mjs';
import { placesOf, snapshot, STARTS } from './walker/starts.mjs';
import { Visitor } from './walker/visitor.mjs';

const WORDS = (process.env.SOFTCRUMB_WALK ?? '').split(',').filter(Boolean);
const isEveryday = !WORDS.includes('all');
const SEED = 20260327;
const AT_ONCE = 2;
/// So many are done by one visitor, before another browser context is opened.
const BATCH = 40;

const wanted = (kind, word) => {
  const named = WORDS.filter((word) => kind.includes(word));
  return named.length === 0 || named.includes(word);
};
const SIZES = ['phone', 'wide'];
const PLACES = placesOf('first example');

/// Does all jobs, a few visitors at once; gives the results in the order of the jobs.
async function walk(session, jobs, stored) {
  const groups = grouped([...jobs.entries()], ([, job]) => `${job.size} ${job.start}`);
  const batches = groups.flatMap((group) =>
    Array.from({ length: Math.ceil(group.length / BATCH) }, (_, at) => group.slice(at * BATCH, (at + 1) * BATCH)));
  const results = [];
  const next = async () => {
    for (let batch = batches.shift(); batch; batch = batches.shift()) {
      const { size, start } = batch[0][1];
      const visitor = await new Visitor(session.browser, session.address, { size, start, stored: stored[start] }).open();
      for (const [at, job] of batch) {
        results[at] = { ...job, ...(await visitor.go(job)) };
        for (const trouble of results[at].troubles.filter((one) => !heard.has(one))) {
          heard.add(trouble);
          console.log(`  ${way(results[at])}\n      ${trouble}`);
        }
      }
      await visitor.close();
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, next));
  return results;
}

const heard = new Set();
const way = ({ size, start, place, path }) =>
  [size, start, place, ...path.map(({ key, variant }) => `${key} [${variant.kind}]`)].join(' > ');

test('every control can be pressed, from every start', async (session) => {
  const starts = Object.keys(STARTS).filter((start) => wanted(Object.keys(STARTS), start));
  const stored = {};
  for (const start of starts) stored[start] = await snapshot(session.browser, session.address, start);
  const doors = starts.flatMap((start) => placesOf(start).filter((place) => wanted(PLACES, place))
    .flatMap((place) => SIZES.filter((size) => wanted(SIZES, size)).map((size) => ({ size, start, place, path: [] }))));
  let found = await walk(session, doors, stored);
  const plan = new Plan({ seed: SEED, isEveryday });
  let presses = 0;
  for (let jobs = plan.next(found); jobs.length > 0; jobs = plan.next(found)) {
    console.log(`  ${jobs.length} presses to do, at ${(performance.now() / 1000).toFixed(0)} s`);
    found = await walk(session, jobs, stored);
    presses += jobs.length;
  }
  console.log(`  walker: ${plan.known.size} controls, pressed or typed into ${presses} times, from ${doors.length} openings of a place`);
  assert.equal(heard.size, 0, 'kinds of trouble, each told above where it was first met');
}, { seconds: 6 * 60 * 60, alone: true });
