//! The frame around every place: name, tools, key figures, notices, trial, dialog.

import assert from 'node:assert/strict';

/// The text shown while a part of the page loads, in each language.
const OPENING = /^(Opening|Abriendo|開いて)/;

/// What must never be read on the page: a figure that went wrong, or a value of the code's own.
const WRONG = /\b(NaN|inf|infinity|undefined|null|panicked)\b|(say|message)!\(|Some\(|\[object |\{\{/i;

export class AppPage {
  constructor(page) {
    this.page = page;
    this.shelfButton = page.getByRole('banner').getByRole('button', { name: 'Shelf', exact: true });
    this.nameButton = page.getByRole('banner').locator('.name');
    this.keys = page.getByRole('region', { name: 'Key figures' });
    this.trial = page.getByRole('region', { name: 'Trial' });
    this.dialog = page.getByRole('dialog');
    this.stale = page.getByText('These are the last good figures.');
  }

  /// The name of the formula that is open.
  async name() {
    return (await this.nameButton.textContent()).trim();
  }

  tool(name) {
    return this.page.getByRole('banner').getByRole('button', { name, exact: true });
  }

  async canUndo() {
    // On a phone it is out of sight while there is nothing to undo.
    const undo = this.page.getByRole('banner').getByRole('button', { name: 'Undo', exact: true, includeHidden: true });
    return (await undo.getAttribute('aria-disabled')) !== 'true';
  }

  async undo() {
    await this.tool('Undo').click();
    await drawn(this.page);
  }

  async redo() {
    await this.tool('Redo').click();
    await drawn(this.page);
  }

  place(name) {
    return this.page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name, exact: true });
  }

  /// Goes to a place and opens its rows; `asItOpens`: leaves them as they are.
  async go(name, { asItOpens = false } = {}) {
    await this.place(name).click();
    await this.page.getByRole('heading', { level: 1, name, exact: true }).waitFor({ state: 'attached' });
    await drawn(this.page);
    if (!asItOpens) await this.openRows();
  }

  /// Opens the row of this title, where it is closed.
  async openRow(title) {
    const row = this.page.locator('main .answer').filter({ has: this.page.getByRole('heading', { level: 2, name: title, exact: true }) });
    await row.waitFor();
    if (await row.locator('> details:not([open])').count() > 0) await row.locator('summary').first().click();
    await counts(row.locator('.loading'), 0, `${title} is drawn`);
    await drawn(this.page);
  }

  /// Opens every row of the place that is there.
  async openRows() {
    await this.page.locator('main .answer > details:not([open]) > summary').evaluateAll((rows) => rows.forEach((row) => row.click()));
    await drawn(this.page);
    await counts(this.page.locator('main .answer .loading'), 0, 'all rows are drawn');
    await drawn(this.page);
  }

  /// A figure that opens to its working, by what it is called.
  figure(label) {
    return this.page.getByRole('button').filter({ has: this.page.getByText(label, { exact: true }) });
  }

  keyFigure(label) {
    return this.keys.getByRole('button').filter({ has: this.page.getByText(label, { exact: true }) });
  }

  /// The key figures as they are read: number with unit, name, and what a trial says of it.
  async keyFigures() {
    const all = await this.keys.getByRole('button').evaluateAll((buttons) =>
      buttons.map((button) => [...button.children].map((part) => part.textContent)));
    return all.map(([value, label, was]) => ({ value, label, was }));
  }

  async keepTrial() {
    await this.trial.getByRole('button', { name: 'Keep', exact: true }).click();
    await drawn(this.page);
  }

  async dropTrial() {
    await this.trial.getByRole('button', { name: 'Drop', exact: true }).click();
    await drawn(this.page);
  }

  /// Waits until the dialog and its content are drawn.
  async opened() {
    await this.dialog.waitFor();
    await this.dialog.getByRole('status').filter({ hasText: OPENING }).waitFor({ state: 'detached' });
  }

  async openShelf() {
    await this.shelfButton.click();
    await this.opened();
  }

  async openTool(name) {
    await this.tool(name).click();
    await this.opened();
  }

  async close() {
    await this.dialog.getByRole('button', { name: 'Close', exact: true }).click();
    await this.dialog.waitFor({ state: 'hidden' });
  }

  /// A quiet line of the foot, or an alert there, that says this.
  notice(words) {
    return this.page.locator('[role=status], [role=alert]').filter({ hasText: words }).filter({ visible: true });
  }

  /// All text of the page: visible, in boxes, and for screen readers only.
  async words() {
    return this.page.evaluate(() => {
      // What is far off the screen is not laid out, and its words would be left out.
      for (const card of document.querySelectorAll('main .card')) card.style.contentVisibility = 'visible';
      const heard = [...document.querySelectorAll('[aria-label], [title]')]
        .flatMap((element) => [element.ariaLabel, element.title]);
      const typed = [...document.querySelectorAll('input')].map((box) => box.value);
      return [document.title, document.body.innerText, ...document.querySelectorAll('.visually-hidden'), ...heard, ...typed]
        .map((words) => words?.textContent ?? words ?? '').join('\n');
    });
  }

  /// No figure that went wrong is anywhere on the page; `typed` is left out, as the user's own words.
  async saysNothingWrong(typed = []) {
    let words = await this.words();
    for (const own of typed.filter((own) => own !== '')) words = words.replaceAll(own, '');
    saysNothingWrong(words);
  }
}

/// No figure that went wrong is among these words.
export function saysNothingWrong(words) {
  assert.equal(wrongIn(words), undefined);
}

/// A figure that went wrong, with the words around it; undefined where there is none.
export function wrongIn(words) {
  const found = words.match(WRONG);
  return found ? `“${found[0]}” in: ${around(words, found.index)}` : undefined;
}

function around(words, at = 0) {
  return words.slice(Math.max(0, at - 80), at + 80);
}

/// Waits for the next frame to be drawn: a change shows in all figures by then.
export function drawn(page) {
  return page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))));
}

/// Waits until an element's words match; every space counts as a plain one.
export function reads(locator, pattern, what = `it reads ${pattern}`) {
  return until(async () => (await locator.innerText()).replaceAll(/[\u00a0\u202f]/g, ' '), (words) => pattern.test(words), what);
}

/// The number of a figure, which comes before its name.
export function valueOf(figure) {
  return figure.evaluate((button) => button.firstElementChild.textContent);
}

/// Waits until a box holds this text.
export function holds(box, text, what = `the box holds ${text}`) {
  return until(() => box.inputValue(), (seen) => seen === text, what);
}

/// Waits until a box is marked as invalid, or no longer.
export function isInvalid(box, invalid = true) {
  return until(() => box.getAttribute('aria-invalid'), (seen) => (seen === 'true') === invalid, `invalid: ${invalid}`);
}

/// Waits until something that is asked of the page is this; every space counts as a plain one.
export function is(look, wanted, what = `it is ${wanted}`) {
  return until(async () => (await look()).replaceAll(/[\u00a0\u202f]/g, ' '), (seen) => seen === wanted, what);
}

/// Waits until there are so many of an element.
export function counts(locator, count, what = `there are ${count}`) {
  return until(() => locator.count(), (seen) => seen === count, what);
}

/// Waits until what is asked for holds; says what it was else.
export async function until(look, holds, what) {
  const end = performance.now() + 10_000;
  let seen = await look();
  while (!holds(seen)) {
    assert.ok(performance.now() < end, `${what}: ${JSON.stringify(seen)}`);
    await new Promise((done) => setTimeout(done, 50));
    seen = await look();
  }
  return seen;
}
