//! The Heat place, found by roles and labels.

import { AppPage, valueOf } from './app_page.mjs';
import { plain } from './batch.mjs';

export class HeatPage {
  constructor(page) {
    this.page = page;
  }

  /// Goes there by the bar of places, and opens its rows.
  async open() {
    await new AppPage(this.page).go('Heat');
    return this;
  }

  /// Opens what is folded away within a row.
  async unfold(title) {
    await this.page.getByText(title, { exact: true }).click();
  }

  /// A key figure, as it is shown.
  async key(label) {
    const keys = this.page.getByRole('region', { name: 'Key figures' });
    return plain(await valueOf(keys.getByRole('button', { name: label })));
  }

  /// A key figure as a number.
  async degrees(label) {
    return Number.parseFloat((await this.key(label)).replace('−', '-').replace(/^[^-\d]*/, ''));
  }

  box(label) {
    return this.page.getByRole('textbox', { name: typeof label === 'string' ? new RegExp(`^${label}`) : label });
  }

  card(name) {
    return this.page.getByRole('region', { name });
  }

  async text(name) {
    return plain(await this.card(name).innerText());
  }

  rules() {
    return this.page.getByRole('combobox', { name: 'Food-safety rules' });
  }
}

export { plain };
