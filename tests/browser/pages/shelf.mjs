//! The shelf: the saved formulas, and the deleted ones.

import { drawn } from './app_page.mjs';

export class Shelf {
  /// `app`: the page around it (app_page.mjs), on which the shelf is opened.
  constructor(app) {
    this.app = app;
    this.dialog = app.dialog;
  }

  async open() {
    await this.app.openShelf();
    return this;
  }

  row(name) {
    return this.dialog.getByRole('listitem').filter({ hasText: name });
  }

  /// Names of the formulas on it, the one changed last first.
  async names() {
    const rows = this.dialog.getByRole('listitem').filter({ has: this.app.page.getByRole('button', { name: /^Delete / }) });
    return rows.evaluateAll((all) => all.map((row) => row.querySelector('button > span').textContent));
  }

  async pick(name) {
    await this.row(name).getByRole('button').first().click();
    await this.dialog.waitFor({ state: 'hidden' });
    await drawn(this.app.page);
  }

  async bin(name) {
    await this.row(name).getByRole('button', { name: /^Delete / }).click();
    await drawn(this.app.page);
  }

  /// Asks for the bin to be emptied; it is asked back.
  async emptyBin() {
    await this.dialog.getByRole('button', { name: 'Empty the bin for good' }).click();
    await this.dialog.getByRole('alert').waitFor();
  }

  async openBin() {
    await this.dialog.getByText('The bin', { exact: true }).click();
  }

  async putBack(name) {
    await this.row(name).getByRole('button', { name: new RegExp(`^Restore ?: ${name}$`) }).click();
    await drawn(this.app.page);
  }
}
