//! The Chocolate place, found by roles and labels.

import { AppPage, drawn, valueOf } from './app_page.mjs';

export class ChocolatePage {
  constructor(page) {
    this.page = page;
  }

  /// Goes there by the bar of places, and opens its rows.
  async open() {
    await this.page.getByRole('link', { name: 'Chocolate' }).click();
    await this.page.getByRole('heading', { level: 1, name: 'Chocolate' }).waitFor({ state: 'attached' });
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

  card(name) {
    return this.page.getByRole('region', { name, exact: true }).or(this.page.getByRole('group', { name, exact: true }));
  }
}
