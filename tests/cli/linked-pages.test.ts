import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { bodkin } from './session.ts';

const root = new URL('../../', import.meta.url);
const read = (page: string): string => readFileSync(new URL(page, root), 'utf8');
const pages = readdirSync(new URL('cli', root))
  .filter((file) => file.endsWith('.md'))
  .map((file) => `cli/${file}`);

describe('the pages on commands', () => {
  it('are all linked from the README', () => {
    const readme = read('README.md');
    expect(pages.filter((page) => !readme.includes(`(${page})`))).toEqual([]);
  });

  it.each(['README.md', ...pages])('link to what is there: %s', (page) => {
    const links = Array.from(read(page).matchAll(/\]\(([^)#\s]+)/g), ([, link = '']) => link);
    expect(
      links.filter((link) => !link.startsWith('https:') && !existsSync(new URL(link, new URL(page, root)))),
    ).toEqual([]);
  });

  it.each(['README.md', 'DEVELOPERS.md', ...pages])('name files and folders that there are: %s', (page) => {
    const named = Array.from(
      read(page).matchAll(/`((?:cli|drafts|engine|measurements|tests)\/[\w./-]*)`/g),
      ([, path = '']) => path,
    );
    expect(named.filter((path) => !existsSync(new URL(path, root)))).toEqual([]);
  });

  it.each(['README.md', ...pages])('call no option that the command has not: %s', async (page) => {
    const calls = read(page).matchAll(/\bbodkin ([a-z]+)([^`\n]*)/g);
    for (const [call, command = '', words = ''] of calls) {
      const options = words.match(/(?<![\w-])--[a-z][a-z-]+/g) ?? [];
      if (options.length === 0) continue;
      const { out: help } = await bodkin([command, '--help']);
      expect(
        options.filter((option) => option !== '--draft' && !help.includes(`${option} `)),
        call,
      ).toEqual([]);
    }
  });
});
