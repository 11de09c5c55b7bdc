import { Command } from 'commander';
import type { Choice } from '../engine/pattern/styling.ts';
import { lengthFigure } from '../engine/text/length.ts';
import type { Unit } from '../engine/text/units.ts';
import { withLengthsIn } from '../engine/text/with-lengths-in.ts';
import { findGarment, jsonOption } from './input/options.ts';
import { type Reader, readerOf, unitsOption } from './output/reader.ts';
import { say } from './output/say.ts';
import { table } from './output/table.ts';
import { json } from './output/walk-result.ts';
import type { GarmentsResult } from './results/listed.ts';
import type { ExitCode, Session } from './session.ts';

interface ListOptions {
  readonly units?: Unit;
  readonly json?: true;
}

/** `bodkin list`: what can be drafted, and every choice it leaves open. */
export const listCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('list')
    .description('list the garments and their styling choices, each with default, unit, range and help')
    .argument('[garment]', 'only this one')
    .addOption(unitsOption())
    .addOption(jsonOption())
    .action(async (only: string | undefined, options: ListOptions) => {
      const asked = only === undefined ? session.garments : [findGarment(session.garments, only)];
      const drafts = asked.map(({ name, title, choices }) => ({ name, title, choices }));
      const result: GarmentsResult = drafts;
      if (options.json) await session.write(json(result));
      else
        for (const { name, title, choices } of drafts) {
          const reader = readerOf(session, options.units);
          const rows = choices.map((choice) => row(choice, reader));
          await say(session, `${name}: ${title}\n${table(columns, rows, reader.columns)}\n`);
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

function row(choice: Choice, { units }: Reader): readonly string[] {
  const { name, help } = choice;
  const said = [`  ${name}`, withLengthsIn(help, units)] as const;
  if (choice.kind === 'word') return [said[0], choice.default, 'word', choice.words.join(' | '), said[1]];
  const { unit, min, max } = choice;
  const figure = (value: number | 'auto'): string =>
    unit === 'mm' && units !== 'mm' && value !== 'auto' ? lengthFigure(value, units) : String(value);
  const shown = unit === 'mm' ? units : unit;
  return [said[0], figure(choice.default), shown, `${figure(min)} to ${figure(max)}`, said[1]];
}
