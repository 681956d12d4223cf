//! Every place and every dialog, by name, and how a user gets there.

import { Formula } from './formula.mjs';
import { drawn } from './app_page.mjs';

export const PLACES = ['Formula', 'Batch', 'Heat', 'Chocolate', 'Day'];

const PART = 'Final dough';

/// Opens each dialog of the page, above the place Formula.
export const DIALOGS = {
  Shelf: (page) => page.openShelf(),
  'Share': (page) => page.openTool('Share'),
  Settings: (page) => page.openTool('Settings'),
  'a figure’s working': async (page) => {
    await page.keyFigure('True hydration').click();
    await page.opened();
  },
  'a weight’s working': async (page) => {
    await page.keyFigure('Dough').click();
    await page.opened();
  },
  'about it': async (page) => {
    await page.nameButton.click();
    await page.opened();
  },
  'an ingredient': (page) => page.openLine(PART, 'Whole milk'),
  'a part': (page) => page.openPart('Scald'),
  'a new part': async (page) => {
    await page.page.getByRole('button', { name: 'Add a part' }).click();
    await page.opened();
  },
  'picking an ingredient': async (page) => {
    await page.part(PART).getByRole('button', { name: 'Add an ingredient' }).click();
    await page.opened();
  },
  'an own ingredient': async (page) => {
    await DIALOGS['picking an ingredient'](page);
    await page.dialog.getByRole('button', { name: 'An ingredient of my own' }).click();
    await drawn(page.page);
  },
};

/// Goes to every place and dialog in turn and calls `look` there.
export async function each(visit, look) {
  const page = new Formula(visit.page);
  for (const place of PLACES) {
    await page.go(place);
    const folded = page.page.getByRole('main').locator('details:not([open]) > summary');
    while (await folded.count() > 0) await folded.first().click();
    await look(place, page);
  }
  await page.go('Formula');
  for (const [name, open] of Object.entries(DIALOGS)) {
    await open(page);
    await drawn(page.page);
    await look(name, page);
    await page.close();
  }
}
