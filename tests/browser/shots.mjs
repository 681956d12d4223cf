//! Pictures for the README, made when SOFTCRUMB_SHOTS is set: `SOFTCRUMB_SHOTS=1 node run.mjs shots`.

import assert from 'node:assert/strict';
import { readdirSync, statSync } from 'node:fs';
import { shot } from './launch.mjs';
import { Formula } from './pages/formula.mjs';
import { PLACES } from './pages/views.mjs';
import { test } from './registry.mjs';

const SHOTS = new URL('./shots/', import.meta.url);
const MOST = 700_000;

for (const [screen, colorScheme] of [['phone', 'light'], ['phone', 'dark'], ['wide', 'light']]) {
  // Together they may weigh 700 KB, so on a wide screen one place shows the layout of all.
  const places = screen === 'wide' ? PLACES.slice(0, 1) : PLACES;
  test(`pictures: ${screen}, ${colorScheme}`, async (session) => {
    const formula = new Formula((await session.open(screen, { colorScheme, deviceScaleFactor: 1 })).page);
    for (const place of places) {
      await formula.go(place);
      await shot(formula.page, `${place.toLowerCase()}-${screen}-${colorScheme}`);
    }
  });
}

test('all pictures together weigh less than 700 KB', () => {
  const weighed = readdirSync(SHOTS).map((name) => statSync(new URL(name, SHOTS)).size);
  const all = weighed.reduce((sum, size) => sum + size, 0);
  assert.ok(all > 0 && all < MOST, `${all} bytes`);
});
