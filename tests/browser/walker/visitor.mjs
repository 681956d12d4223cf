//! One visitor of the walker: opens a place in a fresh state, follows a path of presses, and checks the result.

import { SCREENS } from '../launch.mjs';
import { wrongIn } from '../pages/app_page.mjs';
import { install } from './in_page.mjs';
import { NOW, STARTS, WHERE } from './starts.mjs';
import { numbersFor } from './values.mjs';

/// Said because the service worker is left out: it would only take time.
const OURS = /Service Worker registration blocked/;

export class Visitor {
  constructor(browser, address, { size, start, stored }) {
    Object.assign(this, { browser, address, size, start, stored, troubles: [] });
  }

  async open() {
    this.context = await this.browser.newContext({ ...SCREENS[this.size], ...WHERE, serviceWorkers: 'block' });
    await this.context.clock.setFixedTime(NOW);
    // Each load begins with what is stored at the start, whatever the last one wrote.
    await this.context.addInitScript((stored) => {
      localStorage.clear();
      for (const [key, text] of stored) localStorage.setItem(key, text);
    }, this.stored);
    await this.context.addInitScript(install);
    this.context.on('weberror', (error) => this.troubles.push(`error: ${error.error().message}`));
    this.context.on('console', (line) => {
      if (['error', 'warning'].includes(line.type()) && !OURS.test(line.text())) this.troubles.push(`console: ${line.text()}`);
    });
    this.page = await this.context.newPage();
    this.page.setDefaultTimeout(60_000);
    return this;
  }

  close() {
    return this.context.close();
  }

  in(name, ...given) {
    return this.page.evaluate(([name, given]) => window.walker[name](...given), [name, given]);
  }

  /// Comes to a place as if for the first time, all its folds open.
  async fresh(place) {
    const at = STARTS[this.start].at ?? `#${place.toLowerCase()}`;
    if (this.page.url() === 'about:blank') await this.page.goto(this.address + at);
    else {
      await this.page.evaluate((at) => history.replaceState(null, '', at), at);
      await this.page.reload();
    }
    await this.in('settled');
    if (STARTS[this.start].at) {
      await this.page.getByRole('navigation', { name: 'Places' }).getByRole('link', { name: place }).click();
      await this.in('settled');
    }
    await this.in('unfold');
  }

  /// Does one thing with one control. `false`: the control is not there.
  async act({ key, variant }) {
    const aim = await this.in('aim', key);
    if (!aim) return false;
    if (aim.covered && variant.kind !== 'file') this.troubles.push(`covered by ${aim.covered}`);
    if (variant.kind === 'press') await this.tap(aim);
    else {
      const handle = (await this.page.evaluateHandle((key) => window.walker.find(key), key)).asElement();
      await this.put(handle, key, variant);
    }
    await this.in('settled');
    return true;
  }

  /// Presses a button that may be there. Whether it was.
  async press(name) {
    const button = this.page.getByRole('main').getByRole('button', { name, exact: true });
    if (!(await button.isVisible())) return false;
    await button.click();
    await this.in('settled');
    return true;
  }

  tap({ x, y }) {
    return this.size === 'phone' ? this.page.touchscreen.tap(x, y) : this.page.mouse.click(x, y);
  }

  async put(handle, key, { kind, value }) {
    if (kind === 'file') return handle.setInputFiles(value);
    if (kind === 'option') {
      const count = await handle.evaluate((list) => list.options.length);
      const index = value === 'first' ? 0 : count - 1;
      return count > 0 ? handle.selectOption({ index }) : undefined;
    }
    if (kind === 'good') return this.type(handle, key);
    await handle.fill(value);
    return handle.evaluate((box) => box.blur());
  }

  /// Types numbers until one is taken.
  async type(handle, key) {
    const { text } = await this.in('box', key);
    let box;
    for (const number of numbersFor(text)) {
      await handle.fill(number);
      await this.in('settled');
      box = await this.in('box', key);
      if (!box?.isWrong) break;
    }
    // A formula may have no room for any number; then the box says why.
    if (box?.isWrong && !box.said) this.troubles.push(`takes no number near ${text}, and does not say why`);
    await handle.evaluate((box) => box.blur());
  }

  /// Goes down a path in a fresh state, the last step being the one that is tried; gives what is in reach then.
  async go({ place, path }) {
    this.troubles = [];
    try {
      await this.fresh(place);
      for (const step of path.slice(0, -1)) {
        if (!(await this.act(step))) throw new Error(`${step.key} is not there again`);
      }
      const last = path.at(-1);
      if (!last) return { seen: await this.look(last), troubles: this.troubles };
      const before = await this.in('box', last.key);
      if (!(await this.act(last))) throw new Error('it is not there again');
      const seen = await this.look(last);
      await this.checkBox(path, before);
      return { seen, troubles: this.troubles };
    } catch (error) {
      this.troubles.push(`stopped: ${error.message.split('\n')[0]}`);
      return { seen: { controls: [], place }, troubles: this.troubles };
    }
  }

  /// What is shown: no control without a name, no figure that is no number.
  async look(last) {
    const seen = await this.in('seen');
    for (const { name, key } of seen.controls) if (!name) this.troubles.push(`no name: ${key}`);
    const typed = typeof last?.variant.value === 'string' ? last.variant.value : '';
    const wrong = wrongIn(typed ? seen.words.replaceAll(typed, '') : seen.words);
    if (wrong) this.troubles.push(wrong);
    return seen;
  }

  /// An invalid value is marked as invalid; an accepted one is undone by one step.
  async checkBox(path, before) {
    const { key, variant } = path.at(-1);
    if (!['good', 'bad', 'empty', 'moment'].includes(variant.kind)) return;
    const after = await this.in('box', key);
    if (variant.kind === 'bad' && !(after?.isWrong && after.said)) this.troubles.push(`“${variant.value}” is not told to be wrong`);
    if (after?.isWrong || after?.text === before.text) return;
    const isDialog = path.length > 1 && (await this.in('seen')).isDialog;
    if (isDialog) await this.page.keyboard.press('Escape');
    await this.in('settled');
    // The bench shows nothing but its step: the way to undo is to leave it.
    const isBench = await this.press('Leave');
    const undo = this.page.getByRole('banner').getByRole('button', { name: 'Undo', exact: true, includeHidden: true });
    if ((await undo.getAttribute('aria-disabled')) !== 'true') await undo.click();
    await this.in('settled');
    // A bench that was only looked at is opened anew.
    if (isBench && !(await this.press('Back to the bench'))) await this.press('Start at the bench');
    for (const step of isDialog ? path.slice(0, -1) : []) await this.act(step);
    const undone = await this.in('box', key);
    if (undone?.text !== before.text) {
      this.troubles.push(`not undone (${variant.kind}): “${before.text}”, “${after?.text}”, then “${undone?.text}”`);
    }
  }
}
