//! Serves a built folder on a free port, with the project's own server.

import { spawn } from 'node:child_process';
import { cp, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';

export const ROOT = fileURLToPath(new URL('../../', import.meta.url));
export const DIST = process.env.SOFTCRUMB_DIST ?? join(ROOT, 'dist');

/// Starts a server; gives its address and a way to end it.
export function serve(folder = DIST, under = '/') {
  const words = ['serve', '--dir', folder, '--under', under, '--port', '0'];
  const xtask = process.env.SOFTCRUMB_XTASK;
  const child = xtask ? spawn(xtask, words, { cwd: ROOT }) : spawn('cargo', ['xtask', ...words], { cwd: ROOT });
  const stop = () => child.kill();
  process.once('exit', stop);
  return new Promise((resolve, reject) => {
    let said = '';
    const hear = (piece) => {
      said += piece;
      const address = said.match(/http:\/\/\S+\/(?=\s)/)?.[0];
      if (address) resolve({ address, stop });
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', (piece) => { said += piece; });
    child.on('error', reject);
    child.on('exit', () => reject(new Error(`the server ended:\n${said}`)));
  });
}

/// A copy of the built page that a test may change.
export async function copy() {
  const folder = await mkdtemp(join(tmpdir(), 'softcrumb-'));
  await cp(DIST, folder, { recursive: true });
  return { folder, remove: () => rm(folder, { recursive: true, force: true }) };
}
