//! The browser's storage, read and damaged from outside the page.

export const KEYS = {
  shelf: 'softcrumb.shelf', open: 'softcrumb.open', settings: 'softcrumb.settings',
  kitchen: 'softcrumb.kitchen', unfiled: 'softcrumb.unfiled',
};

/// Every stored record, by key.
export function all(page) {
  return page.evaluate(() => Object.fromEntries(Object.entries(localStorage).sort()));
}

/// Every stored record except open trials.
export async function keptForGood(page) {
  return Object.fromEntries(Object.entries(await all(page)).filter(([key]) => !key.startsWith('softcrumb.trial.')));
}

/// The trials that wait or are on, by key.
export async function trials(page) {
  return Object.fromEntries(Object.entries(await all(page)).filter(([key]) => key.startsWith('softcrumb.trial.')));
}

/// Has the page write now what it writes a moment after a change, as it does when it is left.
export function written(page) {
  return page.evaluate(() => { window.dispatchEvent(new PageTransitionEvent('pagehide')); });
}

/// Puts a text under a key.
export function put(page, key, text) {
  return page.evaluate(([key, text]) => localStorage.setItem(key, text), [key, text]);
}

/// The key of the open formula's record.
export async function openKey(page) {
  return `softcrumb.formula.${await page.evaluate((key) => localStorage.getItem(key), KEYS.open)}`;
}

/// The stored record of the open formula.
export async function openRecord(page) {
  const key = await openKey(page);
  return page.evaluate((key) => JSON.parse(localStorage.getItem(key)), key);
}

/// Fills the storage to the last character, under keys that are none of the page's.
export function fill(page) {
  return page.evaluate(() => {
    let filled = 0;
    for (let size = 1 << 20; size >= 1; size = size >> 1) {
      try {
        for (;;) localStorage.setItem(`other.${filled++}`, 'x'.repeat(size));
      } catch { /* too large by now: the next half of it */ }
    }
  });
}

/// Runs in the page before it opens: each asking of the storage is refused, as a private window may do.
export function refuseAll() {
  const refuse = () => { throw new DOMException('The operation is insecure.', 'SecurityError'); };
  for (const name of ['getItem', 'setItem', 'removeItem', 'key', 'clear']) Storage.prototype[name] = refuse;
  Object.defineProperty(Storage.prototype, 'length', { get: refuse });
}

/// Runs in the page before it opens: the page has no storage at all.
export function withhold() {
  Object.defineProperty(window, 'localStorage', {
    get() { throw new DOMException('Access is denied for this document.', 'SecurityError'); },
  });
}
