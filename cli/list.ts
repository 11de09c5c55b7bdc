import { Command } from 'commander';
import type { Choice } from '../engine/pattern/styling.ts';
import { findGarment, jsonOption } from './options.ts';
import type { GarmentsResult } from './results/listed.ts';
import type { ExitCode, Session } from './session.ts';
import { table } from './table.ts';
import { json } from './walk-result.ts';

/** `bodkin list`: what can be drafted, and every choice it leaves open. */
export const listCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('list')
    .description('list the garments and their styling choices, each with default, unit, range and help')
    .argument('[garment]', 'only this one')
    .addOption(jsonOption())
    .action(async (only: string | undefined, options: { readonly json?: true }) => {
      const asked = only === undefined ? session.garments : [findGarment(session.garments, only)];
      const drafts = asked.map(({ name, title, choices }) => ({ name, title, choices }));
      const result: GarmentsResult = drafts;
      if (options.json) await session.write(json(result));
      else
        for (const { name, title, choices } of drafts) {
          const rows = choices.map((c) => [`  ${c.name}`, String(c.default), unitOf(c), rangeOf(c), c.help]);
          await session.write(`${name}: ${title}\n${table(columns, rows)}\n`);
        }
      finish(0);
    });

const columns = [
  { title: '  choice' },
  { title: 'default', right: true },
  { title: 'unit' },
  { title: 'range' },
  { title: 'what it does' },
] as const;

const unitOf = (choice: Choice): string => (choice.kind === 'word' ? 'word' : choice.unit);

const rangeOf = (choice: Choice): string =>
  choice.kind === 'word' ? choice.words.join(' | ') : `${choice.min} to ${choice.max}`;
