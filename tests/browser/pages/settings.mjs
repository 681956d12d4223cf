//! The settings: units, language, light or dark.

import { drawn, AppPage } from './app_page.mjs';

export class Settings extends AppPage {
  /// Opens them, whatever language the page is in.
  async open() {
    await this.page.getByRole('banner').getByRole('button', { name: /^(Settings|Ajustes|設定)$/ }).click();
    await this.opened();
  }

  /// The page's language, as it says itself.
  language() {
    return this.page.evaluate(() => document.documentElement.lang);
  }

  /// Chooses a language by what its speakers call it, and waits until the page is in it.
  async choose(name, tag) {
    await this.dialog.getByText(name, { exact: true }).click();
    await this.page.waitForFunction((wanted) => document.documentElement.lang === wanted, tag);
    await drawn(this.page);
  }
}
