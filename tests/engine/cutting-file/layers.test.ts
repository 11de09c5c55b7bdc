import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { layers } from '../../../engine/cutting-file/layers.ts';

it('the page on cutting files tells of every layer what lies on it', () => {
  const page = readFileSync(new URL('../../../cli/cutting-files.md', import.meta.url), 'utf8');
  const rows = layers.map(({ name, says }) => `| \`${name}\` | ${says} |\n`).join('');
  expect(page).toContain(`| layer | holds |\n|---|---|\n${rows}\n`);
});
