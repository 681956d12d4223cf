//! What a key does before its frame: the card that is typed into and the key figures follow at once, the other cards
//! a frame later, and no box is written that shows its text already.

import assert from 'node:assert/strict';
import { Formula } from './pages/formula.mjs';
import { test } from './registry.mjs';

/// Runs in the page: types a digit, and notes which boxes were written, with what they showed, up to the frame and
/// after it.
async function oneKey(id) {
  const own = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value');
  const written = [];
  let isLater = false;
  Object.defineProperty(HTMLInputElement.prototype, 'value', {
    get() { return own.get.call(this); },
    set(text) {
      written.push({ part: this.closest('section').ariaLabel, isSame: own.get.call(this) === text, isLater });
      own.set.call(this, text);
    },
  });
  const box = document.getElementById(id);
  box.focus();
  own.set.call(box, `${box.value}1`);
  const keys = () => document.querySelector('.keys').textContent;
  const before = keys();
  requestAnimationFrame(() => { isLater = true; });
  box.dispatchEvent(new InputEvent('input', { bubbles: true }));
  await new Promise((done) => requestAnimationFrame(done));
  const isAnswered = keys() !== before;
  await new Promise((done) => setTimeout(done, 300));
  Object.defineProperty(HTMLInputElement.prototype, 'value', own);
  return { written, isAnswered };
}

test('a key is answered in its frame by its card and the key figures, and in the one after by the others', async (session) => {
  const { page } = await session.open('phone');
  const id = await new Formula(page).weight('Scald', 'Strong white bread flour').getAttribute('id');
  const { written, isAnswered } = await page.evaluate(oneKey, id);
  assert.ok(isAnswered, 'the key figures follow in the frame of the key');
  assert.deepEqual(written.filter(({ isSame }) => isSame), [], 'no box is written that shows its text already');
  const [now, later] = [false, true].map((wanted) => written.filter(({ isLater }) => isLater === wanted).map(({ part }) => part));
  assert.deepEqual([...new Set(now)], ['Scald'], 'its card at once');
  assert.deepEqual([...new Set(later)].toSorted(), ['Chocolate and water', 'Final dough', 'Inside each ball', 'Night dough'], 'the others later');
});

test('Undo keeps its place once something was undone', async (session) => {
  const { page } = await session.open('phone');
  const app = new Formula(page);
  const name = page.locator('.head .name');
  const wide = async () => (await name.boundingBox()).width;
  const before = await wide();
  await app.type(app.weight('Final dough', 'Salt'), '9.1');
  const typed = await wide();
  assert.ok(typed < before, 'Undo comes');
  await app.undo();
  assert.equal(await app.canUndo(), false);
  const undo = page.getByRole('button', { name: 'Undo' });
  await undo.waitFor();
  assert.equal(await undo.getAttribute('aria-disabled'), 'true');
  assert.ok((await wide()) <= typed, 'and stays');
});
