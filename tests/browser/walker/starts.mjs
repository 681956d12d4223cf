//! What the walker starts from: formulas, visits, a trial and bakes, each as what the browser's storage holds then.

import { readFileSync } from 'node:fs';
import { ready, SCREENS } from '../launch.mjs';
import { DayPage } from '../pages/day.mjs';
import { Formula } from '../pages/formula.mjs';
import { PLACES } from '../pages/views.mjs';
import { drawn } from '../pages/app_page.mjs';

const SAMPLES = new URL('../../sheet/samples/', import.meta.url);
const RECIPE = new URL('../../sheet/recipes/chocolate_buns.json', import.meta.url);
/// Links that the first release has written.
const LINK = readFileSync(new URL('v1.examples.links.txt', SAMPLES), 'utf8').split('\n')[0];
/// The walker's clock is stopped at Friday, 27 March 2026, 17:00 in London.
export const NOW = new Date('2026-03-27T17:00:00Z');
export const WHERE = { timezoneId: 'Europe/London', locale: 'en-GB' };

const shelf = async (page, button) => {
  await page.openShelf();
  await page.dialog.getByRole('button', { name: button }).first().click();
  // A new formula asks for its parts.
  if (button === 'New formula') await page.dialog.getByRole('button', { name: 'Done' }).click();
  await page.dialog.waitFor({ state: 'hidden' });
  await drawn(page.page);
};

const bench = (steps) => async (page) => {
  const day = await new DayPage(page.page).open();
  await day.start();
  for (let step = 0; step < steps; step += 1) await day.next();
};

/// By name: how to get there from a first visit, the part of the address behind `#`, and the places to walk.
export const STARTS = {
  'first example': {},
  'second example': { by: (page) => shelf(page, /^Egg and butter loaf/) },
  'third example': { by: (page) => shelf(page, /^Rye scald loaf/) },
  'fourth example': { by: (page) => shelf(page, /^Toast loaf for the class/) },
  'empty formula': { by: (page) => shelf(page, 'New formula') },
  'imported recipe': { by: importRecipe },
  'visit': { at: `#loaf=${LINK}` },
  'trial': { by: trial },
  'bake at its start': { by: bench(0) },
  'bake while it cools': { by: bench(6), places: ['Day'] },
  'bake at the mixer': { by: bench(11), places: ['Day'] },
  'bake while it rises': { by: bench(13), places: ['Day'] },
  'bake in the oven': { by: bench(24), places: ['Day'] },
  'log of a bake': { by: logged, places: ['Day'] },
};

async function importRecipe(page) {
  await page.openTool('Share');
  await page.dialog.getByLabel('Open a recipe').setInputFiles({
    name: 'buns.json', mimeType: 'application/json', buffer: readFileSync(RECIPE),
  });
  await page.dialog.getByRole('button', { name: 'Add to the shelf' }).click();
  await page.dialog.waitFor({ state: 'hidden' });
}

async function trial(page) {
  await page.tryOut();
  await page.type(page.weight('Final dough', 'Whole milk'), '160');
}

async function logged(page) {
  await bench(1)(page);
  await new DayPage(page.page).stop();
  await page.page.getByRole('region', { name: 'Log' }).locator('summary').first().waitFor();
}

/// What the storage holds at a start. A trial is put under the name of a tab that is gone.
export async function snapshot(browser, address, name) {
  const context = await browser.newContext({ ...SCREENS.phone, ...WHERE, serviceWorkers: 'block' });
  await context.clock.setFixedTime(NOW);
  const page = await context.newPage();
  await page.goto(address);
  await ready(page);
  await STARTS[name].by?.(new Formula(page));
  // What is written a moment after a change is written at once when the page is left.
  await page.goto(`${address}service_worker.js`);
  const stored = await page.evaluate(() => Object.entries(localStorage));
  await context.close();
  return stored.map(([key, text]) => [key.replace(/^(softcrumb\.trial\..*\.)[^.]+$/, '$1gone'), text]);
}

export const placesOf = (name) => STARTS[name].places ?? PLACES;
