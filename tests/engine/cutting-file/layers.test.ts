import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { layers } from '../../../engine/cutting-file/layers.ts';

it('the README tells of every layer what lies on it', () => {
  const readme = readFileSync(new URL('../../../README.md', import.meta.url), 'utf8');
  const rows = layers.map(({ name, says }) => `| \`${name}\` | ${says} |\n`).join('');
  expect(readme).toContain(`| layer | holds |\n|---|---|\n${rows}\n`);
});
