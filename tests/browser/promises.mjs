//! The list of promises to the user: each spec file adds to it, run.mjs keeps them.

const promises = [];
let file = '';

/// Adds a promise. `keep` is given a visitor's desk (launch.mjs); it fails by throwing. `alone`: no other is kept beside it.
export function test(name, keep, { seconds = 60, alone = false } = {}) {
  promises.push({ name, keep, seconds, alone, file });
}

/// Reads one spec file and gives the promises it makes.
export async function read(address, name) {
  file = name;
  promises.length = 0;
  await import(address);
  return [...promises];
}
