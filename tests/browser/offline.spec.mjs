//! Online and offline: the device caches the whole page, one version at a time.

import assert from 'node:assert/strict';
import { createHash } from 'node:crypto';
import { readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { createServer, request as pipe } from 'node:http';
import { join } from 'node:path';
import { copy, DIST, serve } from './host.mjs';
import { cached, ready } from './launch.mjs';
import { until } from './pages/app_page.mjs';
import { test } from './registry.mjs';

/// The version of the page, read from its description in the shell, which no place changes.
const version = (page) => page.evaluate(() => document.querySelector('meta[name=description]').content.split(':')[0]);
const cacheNames = (page) => page.evaluate(() => caches.keys());

test('after the first load the page opens in flight mode: on a reload, in a new tab, from a link', async (session) => {
  const { context, page, address } = await session.open('phone');
  await cached(page);
  await context.setOffline(true);
  await page.reload();
  await ready(page);
  // What loads later is cached like the rest.
  await page.getByRole('heading', { name: 'Where the water comes from' }).waitFor();
  await page.close();
  for (const at of ['', 'index.html', '?from=a-friend', '#/anything', '?a=1#/b/2']) {
    const other = await context.newPage();
    await other.goto(address + at);
    await ready(other);
    await other.close();
  }
});

test('a page that was opened past the worker is served by it a moment later, and works offline', async (session) => {
  const { context, page } = await session.open('phone');
  await cached(page);
  const devtools = await context.newCDPSession(page);
  await Promise.all([page.waitForEvent('load'), devtools.send('Page.reload', { ignoreCache: true })]);
  await ready(page);
  await cached(page);
  await context.setOffline(true);
  for (const place of ['Heat', 'Day']) {
    await page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: place, exact: true }).click();
    await page.getByRole('heading', { level: 1, name: place, exact: true }).waitFor({ state: 'attached' });
  }
});

test('every file of the page is kept together', async (session) => {
  const { page, address } = await session.open('phone');
  await cached(page);
  const found = await page.evaluate(async () => {
    const [name] = await caches.keys();
    const requests = await (await caches.open(name)).keys();
    return requests.map((request) => request.url);
  });
  const files = (await readdir(DIST)).filter((name) => !/\.(br|gz)$/.test(name) && name !== 'service_worker.js');
  const expected = files.map((name) => address + (name === 'index.html' ? '' : name));
  assert.deepEqual(found.sort(), expected.sort());
});

/// Passes requests on to the server and counts how often each file was sent in full.
async function counter(address) {
  const sent = {};
  const server = createServer((asked, answer) => {
    pipe(new URL(asked.url, address), { headers: asked.headers }, (given) => {
      if (given.statusCode === 200) sent[asked.url] = (sent[asked.url] ?? 0) + 1;
      answer.writeHead(given.statusCode, given.headers);
      given.pipe(answer);
    }).end();
  });
  await new Promise((done) => server.listen(0, '127.0.0.1', done));
  return { sent, address: `http://127.0.0.1:${server.address().port}/`, stop: () => server.close() };
}

test('what the first load brought is not sent a second time to be kept', async (session) => {
  const { sent, address, stop } = await counter(session.address);
  try {
    const { page } = await session.open('phone', { address });
    await cached(page);
    assert.ok(sent['/'] === 1 && Object.keys(sent).length > 5);
    const twice = Object.entries(sent).filter(([, times]) => times > 1);
    assert.deepEqual(twice, []);
  } finally {
    stop();
  }
});

/// Changes the hosted page as a later version would: another description, and the list that goes with it.
async function publish(folder, { broken = false } = {}) {
  const index = await readFile(join(folder, 'index.html'), 'utf8');
  const later = index.replace('name="description" content="', '$&Later: ');
  assert.notEqual(later, index);
  const sum = (text) => `sha256-${createHash('sha256').update(text).digest('base64')}`;
  const worker = await readFile(join(folder, 'service_worker.js'), 'utf8');
  const changed = worker.replace(sum(index), sum(broken ? `${later} ` : later)).replace(/VERSION = '\w+'/, "VERSION = 'later'");
  assert.ok(changed.includes("'later'") && !changed.includes(sum(index)));
  for (const [name, text] of [['index.html', later], ['service_worker.js', changed]]) {
    await writeFile(join(folder, name), text);
    for (const end of ['br', 'gz']) await rm(join(folder, `${name}.${end}`), { force: true });
  }
}

test('a new version waits until it is told to take over, then replaces the old one whole', async (session) => {
  const { folder, remove } = await copy();
  const host = await serve(folder);
  try {
    const { context, page } = await session.open('phone', { address: host.address });
    await cached(page);
    const [first] = await cacheNames(page);
    // A second tab stays open, so that there is no moment without a page while the first one loads again.
    const other = await context.newPage();
    await other.goto(host.address);
    await ready(other);
    await publish(folder);
    await page.evaluate(() => navigator.serviceWorker.getRegistration().then((found) => found.update()));
    await page.waitForFunction(() => navigator.serviceWorker.getRegistration().then((found) => found.waiting !== null));
    await page.reload();
    await ready(page);
    assert.notEqual(await version(page), 'Later', 'the old version still answers');
    assert.equal((await cacheNames(page)).length, 2);
    await page.evaluate(async () => {
      const isReplaced = new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }));
      let waiting = null;
      // A new page is told of the waiting worker a moment after it is drawn.
      while (!waiting) {
        await new Promise((done) => setTimeout(done, 50));
        ({ waiting } = await navigator.serviceWorker.getRegistration());
      }
      waiting.postMessage({ softcrumb: 'take over' });
      await isReplaced;
    });
    await until(() => cacheNames(page), (names) => names.length === 1 && names[0] !== first, 'the files of the old version are gone');
    await page.reload();
    await ready(page);
    assert.equal(await version(page), 'Later');
  } finally {
    host.stop();
    await remove();
  }
}, { alone: true });

test('a host that is half changed is not kept: the old version stays whole', async (session) => {
  const { folder, remove } = await copy();
  const host = await serve(folder);
  try {
    const { context, page } = await session.open('phone', { address: host.address, allow: [/Failed to find a valid digest|addAll/] });
    await cached(page);
    await publish(folder, { broken: true });
    const state = await page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      await registration.update();
      const worker = registration.installing;
      if (worker) await new Promise((done) => worker.addEventListener('statechange', () => worker.state !== 'installing' && done()));
      return worker?.state;
    });
    assert.equal(state, 'redundant');
    assert.equal((await cacheNames(page)).length, 1);
    await context.setOffline(true);
    await page.reload();
    await ready(page);
    assert.notEqual(await version(page), 'Later');
  } finally {
    host.stop();
    await remove();
  }
});
