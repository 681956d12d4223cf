//! Starts the page, then asks for the service worker: also when the page itself could not start.
import start from './{{script}}';

const waiting = document.getElementById('waiting');
// The page takes the word away itself, once it is drawn.
try {
  await start({ module_or_path: await wasm(new URL('./{{wasm}}', import.meta.url), '{{wasm_sum}}') });
} catch (trouble) {
  if (waiting) {
    waiting.textContent = 'Softcrumb could not start here. Load the page again with a signal; if that does not help, '
      + 'a newer browser will. What you saved is still on this device.';
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
