//! Starts the page, then registers the service worker, even when the page could not start.
import start, { begin } from './{{script}}';

// Texts shown before the binary runs, by language: that the page is opening, that a link is, and that it could not start.
const TEXTS = {{texts}};
const [opening, openingLink, failed] = (navigator.languages ?? []).map((tag) => TEXTS[tag.split('-')[0].toLowerCase()]).find(Boolean) ?? TEXTS.en;
// The page has settled once nothing has come for so long, in ms.
const QUIET = 1000;
// The page removes these elements once it is drawn.
let waiting = document.getElementById('waiting');
const coming = document.getElementById('coming');
const isLink = location.hash.startsWith('#loaf=');
if (waiting) {
  // A new line, so that it is told as one.
  const line = waiting.cloneNode();
  line.textContent = isLink ? openingLink : opening;
  waiting.replaceWith(line);
  waiting = line;
}
// What a link, or one who has stored something, needs first comes beside the binary.
if (isLink) begin('links', 'visit_weights');
else if (document.documentElement.classList.contains('not-first')) begin('records');
try {
  await start({ module_or_path: await wasm(new URL('./{{wasm}}', import.meta.url), '{{wasm_integrity}}') });
} catch (error) {
  if (waiting) {
    waiting.textContent = failed;
    waiting.classList.add('failed');
  }
  console.error(error);
}
// What is kept for offline comes once nothing else does, so that it takes no room from what is waited for.
const came = () => performance.getEntriesByType('resource').length;
for (let before = -1; before !== came();) {
  before = came();
  await new Promise((later) => setTimeout(later, QUIET));
}
const worker = navigator.serviceWorker;
worker?.register(new URL('./service_worker.js', import.meta.url)).catch(() => {});
// A page that was opened while the worker became active is not served by it; offline it would miss what loads later.
worker?.ready.then(({ active }) => {
  if (!worker.controller) active.postMessage({ softcrumb: 'serve this page' });
});

// Compiles the binary while it loads and checks its checksum; browsers do not check that of a preloaded one yet.
async function wasm(address, integrity) {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  const compiled = WebAssembly.compileStreaming(response.clone()).catch(() => undefined);
  const bytes = await all(response.body.getReader());
  // Without https there is no digest.
  if (globalThis.crypto?.subtle) {
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
    if (`sha256-${btoa(String.fromCharCode(...digest))}` !== integrity) throw new Error('the binary is not the one this page was built with');
  }
  return (await compiled) ?? WebAssembly.compile(bytes);
}

// Reads all of it; the line on the page follows.
async function all(reader) {
  const bytes = new Uint8Array({{wasm_bytes}});
  let at = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) return bytes.subarray(0, at);
    if (at + value.length > bytes.length) throw new Error('the binary is not the one this page was built with');
    bytes.set(value, at);
    at += value.length;
    if (coming) coming.value = at / bytes.length;
  }
}
