
let smallChunks;
// Fetches the file of all small chunks once; gives one of them.
async function smallChunk(start, end) {
    smallChunks ??= fetch(new URL("./{{path}}", import.meta.url), { integrity: "{{integrity}}" }).then((response) => response.arrayBuffer());
    // After a failure the next call fetches again.
    smallChunks.catch(() => { smallChunks = undefined; });
    return new Response((await smallChunks).slice(start, end), { headers: { "Content-Type": "application/wasm" } });
}
