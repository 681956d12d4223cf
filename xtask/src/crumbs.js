
let crumbs;
// A piece too small for a file of its own, cut out of the one in which all of these lie.
async function crumb(from, to) {
    crumbs ??= fetch(new URL("./{{file}}", import.meta.url), { integrity: "{{sum}}" }).then((all) => all.arrayBuffer());
    // What did not come is asked for anew the next time.
    crumbs.catch(() => { crumbs = undefined; });
    return new Response((await crumbs).slice(from, to), { headers: { "Content-Type": "application/wasm" } });
}
