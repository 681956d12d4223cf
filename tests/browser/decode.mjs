//! Square codes and printed pages, read by the peers' decoder (tests/peers/read_paper.py), which is none of ours.

import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const PEERS = fileURLToPath(new URL('../peers/', import.meta.url));
/// The folder for printed pages and pictures, outside the repository.
const RESULTS = fileURLToPath(new URL('./results/', import.meta.url));

function python() {
  const own = ['venv/bin/python', 'venv/Scripts/python.exe'].map((path) => join(PEERS, path));
  const found = process.env.SOFTCRUMB_PYTHON ?? own.find((path) => existsSync(path));
  if (!found) {
    throw new Error('The decoder is Python’s: run `cargo xtask test` once, or make tests/peers/venv '
      + 'with what tests/peers/requirements.txt lists.');
  }
  return found;
}

/// What is read from a PDF or a picture: pages, millimetres, text, codes, and the box around all ink.
export function read(bytes, name) {
  mkdirSync(RESULTS, { recursive: true });
  const file = join(RESULTS, name);
  writeFileSync(file, bytes);
  const words = ['read_paper.py', file];
  if (name.endsWith('.pdf')) words.push(file.replace(/pdf$/, 'png'));
  const ran = spawnSync(python(), words, { cwd: PEERS, encoding: 'utf8', env: { ...process.env, PYTHONDONTWRITEBYTECODE: '1' } });
  if (ran.status !== 0) throw new Error(ran.stderr || `${ran.error}`);
  return JSON.parse(ran.stdout);
}

/// Runs in the page before it opens: its print button opens no dialog, which would hold the page fast.
export function withoutPrinter() {
  window.print = () => { window.asked = true; };
}
