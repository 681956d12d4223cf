//! Starts the page, then asks for the service worker: also when the page itself could not start.
import start from './{{script}}';

// What is said before the binary can speak, by language: that it is opening, and that it could not start.
const SAID = {{words}};
const [opening, failed] = (navigator.languages ?? []).map((tag) => SAID[tag.split('-')[0].toLowerCase()]).find(Boolean) ?? SAID.en;
const waiting = document.getElementById('waiting');
if (waiting) waiting.textContent = opening;
// The page takes the word away itself, once it is drawn.
try {
  await start({ module_or_path: await wasm(new URL('./{{wasm}}', import.meta.url), '{{wasm_sum}}') });
} catch (trouble) {
  if (waiting) {
    waiting.textContent = failed;
  }
  console.error(trouble);
}
navigator.serviceWorker?.register(new URL('./service_worker.js', import.meta.url)).catch(() => {});

// A preloaded binary cannot be held to its sum by the browser yet, so it is done here, while it compiles.
async function wasm(address, sum) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  const compiled = WebAssembly.compileStreaming(answer.clone()).catch(() => undefined);
  const bytes = await answer.arrayBuffer();
  // Without a secure address there is no digest, nor any promise to keep.
  if (globalThis.crypto?.subtle) {
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
    if (`sha256-${btoa(String.fromCharCode(...digest))}` !== sum) throw new Error('the binary is not the one this page was built with');
  }
  return (await compiled) ?? WebAssembly.compile(bytes);
}
