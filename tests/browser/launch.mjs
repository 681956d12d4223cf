//! A test's session: opens the page as on a phone or a wide screen, and collects every error.

import assert from 'node:assert/strict';
import { mkdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';
import { KEYS } from './pages/storage.mjs';

export const SCREENS = {
  phone: { viewport: { width: 360, height: 640 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true },
  wide: { viewport: { width: 1280, height: 800 } },
};
/// How long a test waits for what should be there at once, in milliseconds.
const PATIENCE = 30_000;
const SHOTS = fileURLToPath(new URL('./shots/', import.meta.url));
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

export class Session {
  constructor(browser, address) {
    this.browser = browser;
    this.address = address;
    this.visits = [];
  }

  /// Opens the page in a clean profile. `allow`: patterns of errors that the test is about;
  /// `before`: what runs ahead of the page; `blocked`: the test has blocked storage, so that nothing is written.
  /// Other options go to the browser as they are (colorScheme, reducedMotion, locale, …).
  async open(screen = 'phone', { at = '', address = this.address, allow = [], before, blocked = false, ...more } = {}) {
    const context = await this.browser.newContext({ ...SCREENS[screen], ...more });
    const visit = { context, allow, errors: [], requests: [], address };
    this.visits.push(visit);
    watch(visit);
    context.setDefaultTimeout(PATIENCE);
    await context.addInitScript(noteViolations);
    if (before) await context.addInitScript(before);
    visit.page = await context.newPage();
    await visit.page.goto(address + at);
    await ready(visit.page);
    if (!blocked) await indexed(visit.page);
    return visit;
  }

  /// Closes all visits; an error that was not allowed fails the test.
  async leave(check) {
    const errors = [];
    for (const visit of this.visits) {
      errors.push(...visit.errors.filter((error) => !visit.allow.some((pattern) => pattern.test(error))));
      await visit.context.close();
    }
    if (check) assert.deepEqual(errors, [], 'nothing goes wrong behind the page');
  }
}

/// Runs in the page: a breach of the policy is said aloud, so that the watch hears it.
function noteViolations() {
  document.addEventListener('securitypolicyviolation', (event) =>
    console.error(`policy: ${event.effectiveDirective} ${event.blockedURI}`));
}

function watch(visit) {
  const own = new URL(visit.address).origin;
  visit.context.on('console', (line) => {
    if (line.type() === 'error' || line.type() === 'warning') visit.errors.push(`console: ${line.text()}`);
  });
  visit.context.on('weberror', (error) => visit.errors.push(`error: ${error.error().message}`));
  visit.context.on('request', (request) => {
    visit.requests.push(request.url());
    const address = new URL(request.url());
    if (address.protocol.startsWith('http') && address.origin !== own) visit.errors.push(`leaves: ${request.url()}`);
  });
}

/// Waits until the page has been drawn.
export async function ready(page) {
  await page.waitForFunction(() => document.readyState === 'complete' && !document.getElementById('waiting'));
}

/// Touches a first visit, and waits until it has stored the index of its examples: it does so once touched.
async function indexed(page) {
  await page.keyboard.press('Shift');
  await page.waitForFunction((key) => localStorage.getItem(key) !== null, KEYS.shelf);
}

/// Waits until the service worker has cached all files and answers for the page.
export async function cached(page) {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

/// What the accessibility rules find: rule and places, none when all is well.
export async function axe(page) {
  await page.evaluate(readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8'));
  const found = await page.evaluate((rules) => window.axe.run({ runOnly: rules }), RULES);
  return found.violations.map((rule) => `${rule.id}: ${rule.nodes.map((node) => node.target.join(' ')).join(', ')}`);
}

/// What they find when nothing of the page lies below the bar of places.
export async function breaches(page) {
  const { width, height } = page.viewportSize();
  const full = await page.evaluate(() => document.documentElement.scrollHeight);
  await page.setViewportSize({ width, height: full + 200 });
  // The head stays at the top: nothing may still be scrolled under it.
  await page.evaluate(() => new Promise((done) => {
    scrollTo(0, 0);
    requestAnimationFrame(() => requestAnimationFrame(done));
  }));
  const found = await axe(page);
  await page.setViewportSize({ width, height });
  return found;
}

/// Keeps a picture in shots/ when SOFTCRUMB_SHOTS is set.
export async function shot(page, name) {
  if (!process.env.SOFTCRUMB_SHOTS) return;
  mkdirSync(SHOTS, { recursive: true });
  await page.screenshot({ path: `${SHOTS}${name}.png` });
}
