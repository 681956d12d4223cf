//! The Batch place, found by roles and labels.

import { AppPage, drawn, valueOf } from './app_page.mjs';

export class BatchPage {
  constructor(page) {
    this.page = page;
  }

  /// Goes there by the bar of places, and opens its rows.
  async open() {
    await this.page.getByRole('link', { name: 'Batch' }).click();
    await this.page.getByRole('heading', { level: 1, name: 'Batch' }).waitFor({ state: 'attached' });
    await drawn(this.page);
    await new AppPage(this.page).openRows();
    return this;
  }

  /// A key figure, as it is shown.
  key(label) {
    return valueOf(this.page.getByRole('region', { name: 'Key figures' }).getByRole('button', { name: label }));
  }

  /// A box; its accessible name is its label and its unit.
  box(label) {
    return this.page.getByRole('textbox', { name: new RegExp(`^${label}( .{1,4})?$`) });
  }

  async ask(way) {
    await this.page.getByRole('combobox', { name: 'Scale by' }).selectOption(way);
  }

  /// What the weighing list says of an ingredient of a part: shown, and said below.
  async line(part, food) {
    const row = this.page.getByRole('region', { name: `To weigh: ${part}` }).getByRole('button', { name: food }).first();
    const [, shows, said = ''] = await row.evaluate((one) => [...one.children].map((part) => part.textContent));
    return { shows: plain(shows), said: plain(said) };
  }

  card(name) {
    return this.page.getByRole('region', { name }).or(this.page.getByRole('group', { name, exact: true }));
  }
}

/// An answer row by its title.
export function row(page, title) {
  return page.getByRole('main').locator('section.answer').filter({ has: page.getByRole('heading', { name: title, exact: true }) });
}

/// Opens a row or a fold by its title; leaves it where it is open.
export async function unfold(page, title) {
  const summary = page.locator('summary').filter({ has: page.getByText(title, { exact: true }) }).first();
  if (!await summary.evaluate((summary) => summary.parentElement.open)) await summary.click();
  await drawn(page);
}

/// With ordinary spaces.
export const plain = (text) => text.replaceAll('\u00a0', ' ').replaceAll('\u202f', ' ').replaceAll('⚠ ', '');

/// Makes the window as high as the page, so that nothing lies beneath the bar of places.
export async function whole(page) {
  const { width, height } = await page.evaluate(() => ({ width: innerWidth, height: document.documentElement.scrollHeight }));
  await page.setViewportSize({ width, height });
}
