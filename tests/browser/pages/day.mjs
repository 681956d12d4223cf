//! The Day place, found by roles and labels.

import { ready } from '../launch.mjs';
import { AppPage, drawn } from './app_page.mjs';

/// Friday, 27 March 2026, 17:00 in London: clocks go forward on the Sunday.
const FRIDAY = new Date('2026-03-27T17:00:00Z');
const LONDON = { timezoneId: 'Europe/London', locale: 'en-GB' };

/// What the button of a step says, and that of a step that is waited for.
const DONE = /^(Done|It is (cooling|in the fridge|out of the fridge|baking)|The oven is on)$/;
const GOES_ON = new RegExp(`${DONE.source}|^Start it now$`);

/// Opens the place on that Friday, in London.
export async function onFriday(session, screen = 'phone', more = {}) {
  const visit = await session.open(screen, { ...LONDON, ...more });
  await visit.page.clock.install({ time: FRIDAY });
  await visit.page.reload();
  await ready(visit.page);
  return { ...visit, day: await new DayPage(visit.page).open() };
}

export class DayPage {
  constructor(page) {
    this.page = page;
    this.table = page.getByLabel('Ready by');
    this.steps = page.getByRole('region', { name: 'Steps' });
    this.bench = page.getByRole('region', { name: 'This step' });
    this.timers = page.getByRole('list', { name: 'Timers' });
    this.log = page.getByRole('region', { name: 'Log', exact: true });
    this.bakes = page.locator('.log > li');
  }

  /// Goes there by the bar of places, and opens its rows.
  async open() {
    await new AppPage(this.page).go('Day');
    return this;
  }

  /// Opens its rows again, after a reload.
  async openRows() {
    await this.card('When').waitFor();
    await new AppPage(this.page).openRows();
  }

  card(name) {
    return this.page.getByRole('region', { name, exact: true });
  }

  /// The steps as they are listed: day, clock, name, how long, and whether hands are needed.
  async listed() {
    await this.steps.locator('.step summary').first().waitFor();
    let day = '';
    const all = await this.steps.locator('.step').evaluateAll((rows) => rows.map((row) => ({
      day: row.querySelector('.day')?.textContent,
      parts: [...row.querySelector('summary').children].map((part) => part.textContent.replaceAll('\u00a0', ' ')),
      waits: row.classList.contains('waits'),
    })));
    return all.map(({ day: first, parts: [clock, name, said], waits }) => {
      day = first ?? day;
      return { day, clock, name, said, waits };
    });
  }

  async start() {
    await this.page.getByRole('button', { name: 'Start at the bench' }).click();
    await this.bench.waitFor();
  }

  /// The step that is shown at the bench.
  async at() {
    return this.bench.getByRole('heading', { level: 2 }).innerText();
  }

  /// The button that says a step is done, or is set going.
  get done() {
    return this.page.locator('.bench-buttons').getByRole('button', { name: DONE });
  }

  /// What begins the next step before it is due: a button, or a row that opens where it is not ready.
  get early() {
    return this.page.getByRole('button', { name: 'Start it now', exact: true }).or(this.notReady);
  }

  get notReady() {
    return this.bench.locator('summary').filter({ hasText: 'Start it sooner' });
  }

  /// Does what the bench shows; begins at once what is not due yet.
  async next() {
    if (await this.notReady.isVisible()) {
      await this.notReady.click();
      await this.bench.getByRole('button', { name: 'Start it early' }).click();
    } else {
      await this.page.locator('.bench-buttons').getByRole('button', { name: GOES_ON }).click();
    }
    await drawn(this.page);
  }

  /// Opens what can be noted beside the weights.
  async otherwise() {
    const fold = this.bench.locator('summary').filter({ hasText: 'It went differently' });
    if (!(await fold.evaluate((summary) => summary.parentElement.open))) await fold.click();
  }

  /// The box of a weight that came out otherwise, opened by a tap on the weight.
  async really(food) {
    const weight = this.bench.getByRole('button', { name: new RegExp(`^${food}: `) });
    if ((await weight.getAttribute('aria-expanded')) !== 'true') await weight.click();
    return this.bench.getByLabel(`${food}, actual`);
  }

  /// Leaves the bench for the plan.
  async leave() {
    await this.page.getByRole('button', { name: 'Leave', exact: true }).click();
    await this.steps.waitFor();
  }

  /// Ends the bake where it is, from the plan.
  async stop() {
    await this.leave();
    await this.page.getByRole('button', { name: 'Stop here and save to the log' }).click();
    await this.page.getByRole('button', { name: 'To the plan' }).click();
  }

  async back() {
    await this.page.getByRole('button', { name: 'Back', exact: true }).click();
    await drawn(this.page);
  }

  /// Goes on until a step is shown.
  async goTo(name) {
    for (let steps = 0; steps < 45 && (await this.at()) !== name; steps += 1) await this.next();
  }

  /// The key figures in the head, by their names.
  async keys() {
    const figures = this.page.getByRole('region', { name: 'Key figures' }).getByRole('button');
    const all = await figures.evaluateAll((all) => all.map((one) =>
      [...one.children].map((part) => part.textContent.replaceAll('\u00a0', ' '))));
    return Object.fromEntries(all.map(([value, label, was = '']) => [label, { value, was }]));
  }

  /// What each timer says.
  async timersSay() {
    const said = await this.timers.getByRole('listitem').allInnerTexts();
    return said.map((text) => text.replaceAll('\u00a0', ' ').replaceAll('\n', ' '));
  }
}
