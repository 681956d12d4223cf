//! Which controls are pressed: every one from every start, or each kind of control once.

import { createHash } from 'node:crypto';
import { variants } from './values.mjs';

/// More alike controls than this are a list, of which the walker tests a few.
const LIST = 25;
const OF_LIST = { everyday: 3, all: 5 };
/// A path is at most so many presses long.
const DEPTH = { everyday: 4, all: 5 };

const seeded = (seed, text) => createHash('sha256').update(`${seed} ${text}`).digest().readUInt32BE();

/// Those with the same key together, in the order of the first of each.
export function grouped(all, key) {
  const groups = new Map();
  for (const one of all) groups.set(key(one), [...(groups.get(key(one)) ?? []), one]);
  return [...groups.values()];
}

export class Plan {
  /// `everyday`: each kind of control once, in one way; else each control in every way at every start.
  constructor({ seed, isEveryday }) {
    Object.assign(this, { seed, mode: isEveryday ? 'everyday' : 'all', known: new Set(), formulas: new Map() });
  }

  /// The jobs that follow from what was seen: each control that is new, with each thing to do with it.
  next(found) {
    for (const { size, start, path, seen } of found) if (path.length === 0) this.formulas.set(`${size} ${start}`, seen.formula);
    // Another formula that was opened on the way is walked from its own start.
    const own = found.filter(({ size, start, seen }) => seen.formula === this.formulas.get(`${size} ${start}`));
    const candidates = own.flatMap((one) => this.shortened(one).map((control) => ({ ...one, control })));
    if (this.mode === 'everyday') {
      const order = (one) => seeded(this.seed, `${one.size} ${one.start} ${one.place} ${one.control.key}`);
      candidates.sort((a, b) => order(a) - order(b));
    }
    const jobs = [];
    for (const { size, start, place, path, seen, control } of candidates) {
      const mark = this.mark({ size, start, path, seen, control });
      if (path.length >= DEPTH[this.mode] || this.known.has(mark)) continue;
      this.known.add(mark);
      for (const variant of this.share(variants(control), mark)) {
        jobs.push({ size, start, place, path: [...path, { key: control.key, variant }], control });
      }
    }
    return jobs;
  }

  /// Of the ways to use a control, an everyday run takes one, chosen by the seed.
  share(all, mark) {
    return this.mode === 'all' || all.length < 2 ? all : [all[seeded(this.seed, mark) % all.length]];
  }

  /// The key that distinguishes two controls.
  mark({ size, start, path, seen, control }) {
    if (control.isClose) return `${this.mode === 'all' ? size : ''} Close`;
    const where = control.isAround ? '' : seen.place;
    if (this.mode === 'everyday') return `${where} ${control.kind}`;
    const opened = control.isInDialog ? path.map((step) => step.key).join('>') : '';
    return `${size} ${start} ${where} ${opened} ${control.key}`;
  }

  /// The controls of one view, long lists of alike ones cut down to a few, chosen by the seed.
  shortened({ size, start, path, seen: { controls } }) {
    const lists = grouped(controls, ({ type, list, isInDialog }) => `${type} ${list} ${isInDialog}`);
    return lists.flatMap((alike) => {
      const isWhole = alike.length <= LIST || !alike[0].isInDialog;
      if (isWhole) return alike;
      const order = (one) => seeded(this.seed, `${size} ${start} ${path.map(({ key }) => key)} ${one.key}`);
      return alike.sort((a, b) => order(a) - order(b)).slice(0, OF_LIST[this.mode]);
    });
  }
}
