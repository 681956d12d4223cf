//! The link of the first example, as the first release has written it.

import { readFileSync } from 'node:fs';

export const LINK = readFileSync(new URL('../../sheet/samples/v1.examples.links.txt', import.meta.url), 'utf8').split('\n')[0];
