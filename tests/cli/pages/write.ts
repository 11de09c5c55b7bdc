import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { writtenFiles } from './written-files.ts';

/** Writes everything anew that is written from the program: `npm run pages`. */
for (const [path, text] of writtenFiles()) {
  const { pathname } = new URL(`../../../${path}`, import.meta.url);
  mkdirSync(dirname(pathname), { recursive: true });
  writeFileSync(pathname, text);
}
