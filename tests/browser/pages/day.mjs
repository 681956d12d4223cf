//! The Day place, found by roles and labels.

import { drawn } from './whole.mjs';

export class DayPage {
  constructor(page) {
    this.page = page;
    this.table = page.getByLabel('On the table at');
    this.steps = page.getByRole('region', { name: 'Steps' });
    this.bench = page.getByRole('region', { name: 'This step' });
    this.timers = page.getByRole('list', { name: 'Timers' });
    this.log = page.getByRole('region', { name: 'Log' });
  }

  /// Goes there by the bar of places.
  async open() {
    await this.page.getByRole('link', { name: 'Day' }).click();
    await this.page.getByRole('heading', { level: 1, name: 'Day' }).waitFor({ state: 'attached' });
    return this;
  }

  card(name) {
    return this.page.getByRole('region', { name, exact: true });
  }

  /// The steps as they are listed: clock, name, and the rest.
  async listed() {
    await this.steps.locator('summary').first().waitFor();
    const all = await this.steps.locator('summary').evaluateAll((rows) =>
      rows.map((row) => [...row.children].map((part) => part.textContent.replaceAll('\u00a0', ' '))));
    return all.map(([clock, name, said]) => ({ clock, name, said }));
  }

  async start() {
    await this.page.getByRole('button', { name: 'Start at the bench' }).click();
    await this.bench.waitFor();
  }

  /// The step that is shown at the bench.
  async at() {
    return this.bench.getByRole('heading', { level: 2 }).innerText();
  }

  async next() {
    await this.page.getByRole('button', { name: 'Done, next' }).click();
    await drawn(this.page);
  }

  async back() {
    await this.page.getByRole('button', { name: 'Back', exact: true }).click();
    await drawn(this.page);
  }

  /// Goes on until a step is shown.
  async goTo(name) {
    for (let steps = 0; steps < 30 && (await this.at()) !== name; steps += 1) await this.next();
  }

  async startTimer() {
    await this.bench.getByRole('button', { name: 'Start its timer' }).click();
  }

  /// What each timer says.
  async timersSay() {
    const said = await this.timers.getByRole('listitem').allInnerTexts();
    return said.map((text) => text.replaceAll('\u00a0', ' ').replaceAll('\n', ' '));
  }
}
