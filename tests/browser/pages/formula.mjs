//! The Formula place: parts, and ingredients with a weight and a percentage each.

import { drawn, AppPage } from './app_page.mjs';

export class Formula extends AppPage {
  part(name) {
    return this.page.getByRole('region', { name, exact: true });
  }

  /// Names of the parts in their order.
  async parts() {
    const cards = this.page.locator('main .dough-part').filter({ has: this.page.getByRole('textbox', { name: /, weight/ }) });
    return cards.evaluateAll((all) => all.map((card) => card.ariaLabel));
  }

  line(part, food) {
    return this.part(part).getByRole('group', { name: food, exact: true });
  }

  weight(part, food) {
    return this.part(part).getByRole('textbox', { name: begins(`${food}, weight`) });
  }

  percent(part, food) {
    return this.part(part).getByRole('textbox', { name: begins(`${food}, baker’s percentage`) });
  }

  /// Types into a box and waits for the next frame.
  async type(box, text) {
    await box.fill(text);
    await drawn(this.page);
  }

  /// Opens the formula as it was written, where it stands below what is weighed for a link.
  async openWritten() {
    const written = this.page.getByRole('region', { name: 'The formula as written' });
    await written.locator('summary').click();
    await written.locator('.dough-part').first().waitFor();
    await drawn(this.page);
  }

  /// Begins a trial: later changes are not saved to the formula.
  async tryOut() {
    await this.openRow('What if');
    await this.page.getByRole('button', { name: 'Try changes' }).click();
    await drawn(this.page);
  }

  async whatIf(name) {
    await this.openRow('What if');
    await this.page.getByRole('main').getByRole('button', { name, exact: true }).click();
    await drawn(this.page);
  }

  async openLine(part, food) {
    await this.line(part, food).getByRole('button').first().click();
    await this.opened();
  }

  async openPart(name) {
    await this.part(name).getByRole('heading', { level: 2 }).getByRole('button').click();
    await this.opened();
  }

  /// Adds an ingredient by searching for it.
  async add(part, food) {
    await this.part(part).getByRole('button', { name: 'Add an ingredient' }).click();
    await this.dialog.getByRole('searchbox', { name: 'Search by name' }).fill(food);
    await this.dialog.getByRole('button', { name: begins(food) }).first().click();
    await this.dialog.getByRole('button', { name: 'Done' }).click();
    await this.dialog.waitFor({ state: 'hidden' });
    await drawn(this.page);
  }

  /// Opens the rows below the parts, once they have come.
  async rows() {
    await this.page.locator('main .answer').first().waitFor();
    await this.openRows();
  }
}

/// The accessible name begins so; a box's unit follows it.
function begins(words) {
  return new RegExp(`^${words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')}\\b`, 'i');
}
