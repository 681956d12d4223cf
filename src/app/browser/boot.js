//! Starts the page, then asks for the service worker: also when the page itself could not start.
import start from './{{script}}';

const wasm = new URL('./{{wasm}}', import.meta.url);
const waiting = document.getElementById('waiting');
try {
  await start({ module_or_path: fetch(wasm, { integrity: '{{wasm_sum}}' }) });
  waiting?.remove();
} catch (trouble) {
  if (waiting) {
    waiting.textContent = 'Softcrumb could not start here. Load the page again with a signal; if that does not help, '
      + 'a newer browser will. What you saved is still on this device.';
  }
  console.error(trouble);
}
navigator.serviceWorker?.register(new URL('./service_worker.js', import.meta.url)).catch(() => {});
