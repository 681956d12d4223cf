//! What the walker does with each kind of control: a press, or a good, a bad and an empty value.

import { Buffer } from 'node:buffer';
import { readFileSync } from 'node:fs';

const SHEET = new URL('../../sheet/', import.meta.url);
/// A picture of one dot (PNG).
const DOT = Buffer.from('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==', 'base64');

const file = (name, mimeType, buffer) => ({ name, mimeType, buffer });
const sample = (name) => readFileSync(new URL(name, SHEET));

/// What is good for a box that takes a file, by what it asks for.
function goodFile(accept) {
  if (accept.startsWith('image')) return file('bread.png', 'image/png', DOT);
  if (accept.includes('html')) return file('recipe.html', 'text/html', sample('recipes/whole_page.html'));
  return file('all.json', 'application/json', sample('samples/v1.full.everything.json'));
}

/// What is done with a control, one after the other, each from a fresh state.
export function variants({ type, isDecimal, isDisabled, accept }) {
  if (isDisabled) return [];
  if (isDecimal) return [{ kind: 'good' }, { kind: 'bad', value: 'abc' }, { kind: 'empty', value: '' }];
  if (type === 'text' || type === 'search' || type === 'textarea') {
    return [{ kind: 'text', value: 'Poppy' }, { kind: 'text', value: `<b>${'x'.repeat(300)}` }, { kind: 'text', value: '' }];
  }
  if (type === 'time') return [{ kind: 'moment', value: '05:30' }, { kind: 'moment', value: '' }];
  if (type === 'datetime-local') {
    return ['2026-03-29T16:00', '9999-12-31T23:59', '1970-01-01T00:00', ''].map((value) => ({ kind: 'moment', value }));
  }
  if (type === 'file') {
    const [name, mimeType] = accept.startsWith('image') ? ['bad.png', 'image/png'] : ['bad.json', 'application/json'];
    return [goodFile(accept), file(name, mimeType, Buffer.from('flour 500 g')), file(name, mimeType, Buffer.alloc(0))]
      .map((value) => ({ kind: 'file', value }));
  }
  if (type === 'select') return [{ kind: 'option', value: 'first' }, { kind: 'option', value: 'last' }];
  return [{ kind: 'press' }];
}

/// Numbers near the present one of a box, or likely ones for an empty box; the box should accept one of them.
export function numbersFor(text) {
  const now = Number.parseFloat(text.replace('−', '-'));
  if (Number.isNaN(now)) return ['2', '20', '60', '100', '0.5'];
  const rounded = (number) => String(Number(number.toPrecision(4)));
  return [rounded(now + 1), rounded(now * 1.02), rounded(now * 0.9), rounded(now - 1), rounded(now / 2)];
}
