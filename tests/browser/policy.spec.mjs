//! Nothing comes from elsewhere and nothing goes there; no text of the page can run as a script.

import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import { join } from 'node:path';
import { copy, DIST, serve } from './host.mjs';
import { cached } from './launch.mjs';
import { test } from './registry.mjs';

/// A plain request, headers as given: what a browser sends could be unpacked on the way.
function ask(address, { method = 'GET', path, headers = {} } = {}) {
  return new Promise((resolve, reject) => {
    const asked = request(address, { method, headers, ...(path ? { path } : {}) }, (answer) => {
      const pieces = [];
      answer.on('data', (piece) => pieces.push(piece));
      answer.on('end', () => resolve({ code: answer.statusCode, headers: answer.headers, body: Buffer.concat(pieces) }));
    });
    asked.on('error', reject);
    asked.end();
  });
}

const files = async () => (await readdir(DIST)).filter((name) => !/\.(br|gz)$/.test(name));

const KINDS = {
  html: 'text/html; charset=utf-8', js: 'text/javascript; charset=utf-8', css: 'text/css; charset=utf-8',
  wasm: 'application/wasm', webmanifest: 'application/manifest+json', svg: 'image/svg+xml', png: 'image/png', txt: 'text/plain; charset=utf-8',
};

test('each file says its kind, how long it may be kept, and the security headers', async ({ address }) => {
  for (const name of await files()) {
    const { code, headers } = await ask(address + name);
    assert.equal(code, 200, name);
    assert.equal(headers['content-type'], KINDS[name.split('.').pop()], name);
    const forEver = /\.[0-9a-f]{16}\./.test(name);
    assert.equal(headers['cache-control'], forEver ? 'public, max-age=31536000, immutable' : 'no-cache', name);
    assert.match(headers['content-security-policy'], /default-src 'none'.*frame-ancestors 'none'/);
    assert.equal(headers['x-content-type-options'], 'nosniff');
    assert.equal(headers['referrer-policy'], 'no-referrer');
    assert.equal(headers['cross-origin-opener-policy'], 'same-origin');
    assert.match(headers['permissions-policy'], /geolocation=\(\)/);
  }
});

test('the smallest packing that the browser knows is sent', async ({ address }) => {
  const wasm = (await files()).find((name) => /^softcrumb\..*\.wasm$/.test(name));
  const sizes = {};
  for (const asked of ['br', 'gzip', 'identity']) {
    const { headers, body } = await ask(address + wasm, { headers: { 'accept-encoding': asked } });
    assert.equal(headers['content-encoding'] ?? 'identity', asked);
    assert.equal(headers.vary, 'Accept-Encoding');
    sizes[asked] = body.length;
  }
  assert.ok(sizes.br < sizes.gzip && sizes.gzip < sizes.identity);
});

test('a file that has not changed is not sent again; what is not there is said so', async ({ address }) => {
  const { headers } = await ask(address);
  const again = await ask(address, { headers: { 'if-none-match': headers.etag } });
  assert.equal(again.code, 304);
  assert.equal(again.body.length, 0);
  for (const path of ['/nothing', '/../Cargo.toml', '/%2e%2e/Cargo.toml', '//etc/hosts']) {
    assert.equal((await ask(address, { path })).code, 404, path);
  }
  assert.equal((await ask(address, { method: 'POST' })).code, 405);
});

test('the page repeats the policy, and every script and style is held to its sum', async ({ address }) => {
  const { headers, body } = await ask(address);
  const shell = body.toString();
  const policy = shell.match(/http-equiv="Content-Security-Policy" content="([^"]+)"/)[1];
  assert.equal(`${policy}; frame-ancestors 'none'`, headers['content-security-policy']);
  assert.doesNotMatch(shell, /<style|style=|<script(?![^>]*\bsrc=)|\son\w+=/);
  let held = 0;
  for (const [tag] of shell.matchAll(/<(?:script|link)\b[^>]*>/g)) {
    const path = tag.match(/(?:src|href)="\.\/([^"]+)"/)[1];
    const sum = tag.match(/integrity="(sha256-[^"]+)"/)?.[1];
    if (/rel="(manifest|icon|preload)"/.test(tag)) continue;
    assert.equal(sum, `sha256-${createHash('sha256').update(await readFile(join(DIST, path))).digest('base64')}`, tag);
    held += 1;
  }
  assert.equal(held, 4, 'script, style sheet, who is here first, boot script');
  // What comes later is held by the main script.
  const main = (await readFile(join(DIST, (await files()).find((name) => /^softcrumb\..*\.js$/.test(name))))).toString();
  for (const later of [/^chunks\./, /^later\./]) {
    const name = (await files()).find((one) => later.test(one));
    const sum = createHash('sha256').update(await readFile(join(DIST, name))).digest('base64');
    assert.ok(main.includes(name) && main.includes(`sha256-${sum}`), name);
  }
});

test('a binary that is not the one built is not run, and the page says what to do', async (session) => {
  const { folder, remove } = await copy();
  const host = await serve(folder);
  try {
    const wasm = (await files()).find((name) => /^softcrumb\..*\.wasm$/.test(name));
    const bytes = await readFile(join(folder, wasm));
    // A section of no effect: the binary stays a sound one, it is only not ours.
    await writeFile(join(folder, wasm), Buffer.concat([bytes, Buffer.from([0, 2, 1, 0x78])]));
    for (const end of ['br', 'gz']) await rm(join(folder, `${wasm}.${end}`));
    const context = await session.browser.newContext();
    const page = await context.newPage();
    await page.goto(host.address);
    await page.getByText('could not start').waitFor();
    await context.close();
  } finally {
    host.stop();
    await remove();
  }
});

test('a string does not run as a script, nor does one put into the page, and no other origin is asked', async (session) => {
  const { page } = await session.open('wide', { allow: [/policy: |Content Security Policy|Refused to/] });
  const tried = await page.evaluate(async () => {
    // The driver's own words go round the policy; a string handed to a timer does not.
    setTimeout('window.ranString = true');
    const script = document.createElement('script');
    script.textContent = 'window.ranInline = true';
    document.body.append(script);
    const other = await fetch('http://127.0.0.1:9/').then(() => 'allowed', () => 'refused');
    // Timers of the same length run in the order they were set.
    await new Promise((done) => setTimeout(done));
    return { string: window.ranString ?? false, inline: window.ranInline ?? false, other };
  });
  assert.deepEqual(tried, { string: false, inline: false, other: 'refused' });
  const heard = session.visits[0].errors.filter((error) => error.includes('policy: '));
  for (const directive of ['script-src', 'script-src-elem', 'connect-src']) {
    assert.ok(heard.some((line) => line.includes(directive)), `${directive} in ${heard.join(' | ')}`);
  }
});

test('every request stays at home, and no built file names another address to load from', async (session) => {
  const { page, requests, address } = await session.open('phone');
  await cached(page);
  assert.ok(requests.length >= 5);
  assert.deepEqual(requests.filter((url) => !url.startsWith(address)), []);
  for (const name of (await files()).filter((name) => /\.(html|css|webmanifest)$/.test(name))) {
    assert.doesNotMatch(await readFile(join(DIST, name), 'utf8'), /https?:\/\//, name);
  }
});
