//! Loads the chunks of the binary: what an entry shares with others, then its own.
// Entries, in the order of the bits by which a chunk names those that need it.
const ENTRIES = {{entries}};
// Files: name, checksum, then the chunks in it one after the other, each as its entries and its bytes.
const FILES = {{files}};
const needed = (entry) => chunks.filter((chunk) => chunk.entries & bit(entry));
const bit = (entry) => 1 << ENTRIES.indexOf(entry);
// Makes it once; after a failure the next call tries again.
const once = (make) => {
  let made;
  return (given) => (made ??= make(given).catch((error) => {
    made = undefined;
    throw error;
  }));
};
const chunks = FILES.flatMap(([name, checksum, ...inside]) => {
  const hash = Array.from(atob(checksum).slice(0, 8), (byte) => byte.charCodeAt(0).toString(16).padStart(2, '0')).join('');
  const ask = () => fetch(new URL(`./${name}.${hash}.wasm`, import.meta.url), { integrity: `sha256-${checksum}` });
  return inside.length === 1 ? [alone(inside[0], ask)] : together(inside, ask);
});

// A chunk with a file of its own, compiled while it comes.
function alone(entries, ask) {
  let begun;
  return {
    entries,
    begin: () => { (begun ??= ask()).catch(() => {}); },
    start: once((imports) => {
      const response = begun ?? ask();
      begun = undefined;
      return WebAssembly.instantiateStreaming(response, imports);
    }),
  };
}

// Small chunks in one file.
function together(inside, ask) {
  const bytes = once(async () => (await ask()).arrayBuffer());
  const found = [];
  for (let at = 0, from = 0; at < inside.length; at += 2) {
    const [start, end] = [from, from + inside[at + 1]];
    from = end;
    found.push({
      entries: inside[at],
      begin: () => { bytes().catch(() => {}); },
      start: once(async (imports) => WebAssembly.instantiate((await bytes()).slice(start, end), imports)),
    });
  }
  return found;
}

// Begins to fetch what an entry needs.
export function begin(entry) {
  for (const chunk of needed(entry)) chunk.begin();
}

const loads = Object.fromEntries(ENTRIES.map((entry) => [entry, once(async (exports) => {
  const imports = { __wasm_split: exports };
  const own = (chunk) => chunk.entries === bit(entry);
  const all = needed(entry);
  for (const chunk of all.filter(own)) chunk.begin();
  await Promise.all(all.filter((chunk) => !own(chunk)).map((chunk) => chunk.start(imports)));
  await Promise.all(all.filter(own).map((chunk) => chunk.start(imports)));
})]));

// Loads an entry, once, for the binary with these exports.
export const load = (entry, exports) => loads[entry](exports);
