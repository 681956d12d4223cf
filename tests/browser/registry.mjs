//! The list of tests: each spec file adds to it, run.mjs runs them.

const tests = [];

/// Adds a test. `run` is given a session (launch.mjs); it fails by throwing. `alone`: no other runs beside it.
export function test(name, run, { seconds = 60, alone = false } = {}) {
  tests.push({ name, run, seconds, alone });
}

/// Reads one spec file and gives its tests.
export async function read(address) {
  tests.length = 0;
  await import(address);
  return [...tests];
}
