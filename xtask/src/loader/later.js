//! What loads later: the style sheet of what is not on the first screen, and the script that loads chunks.
let later;
let attempts = 0;
function fromLater() {
  // A browser may remember that a script did not come; under another fragment it asks again.
  const script = new URL(`./{{loader}}#${attempts}`, import.meta.url).href;
  attempts += 1;
  linked('modulepreload', script, '{{loader_integrity}}');
  const style = linked('stylesheet', new URL('./{{later_styles}}', import.meta.url).href, '{{later_styles_integrity}}');
  return Promise.all([import(script), style]).then(([loader]) => loader);
}
function linked(rel, href, integrity) {
  const link = Object.assign(document.createElement('link'), { rel, href, integrity });
  const came = new Promise((resolve, reject) => Object.assign(link, { onload: resolve, onerror: reject }));
  document.head.append(link);
  // Who waits for it is told too.
  came.catch(() => link.remove());
  return came;
}
function loader() {
  later ??= fromLater().catch((error) => {
    later = undefined;
    throw error;
  });
  return later;
}
const entry = (name) => async (callback, data) => {
  let came = true;
  try {
    await (await loader()).load(name, wasm);
  } catch (error) {
    console.error(error);
    came = false;
  }
  wasm.__indirect_function_table.get(callback)(data, came);
};
const entries = { {{entries}} };
// Begins to fetch what these entries need, before the binary asks for it.
export function begin(...names) {
  loader().then(({ begin }) => names.forEach(begin)).catch(() => {});
}
