import { Command } from 'commander';
import { readBody } from '../engine/body/read.ts';
import { bodyResult, bodyTable } from './body-table.ts';
import { jsonOption } from './options.ts';
import { plain } from './plain.ts';
import { readBodyFile } from './read-body.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { Unusable } from './unusable.ts';
import { json } from './walk-result.ts';

/** `bodkin body`: one set of measurements, validated and completed, and where each number came from. */
export const bodyCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  new Command('body')
    .description('read, validate and complete one set of measurements; show what was estimated, and how well')
    .argument('<file>', 'measurements, YAML or JSON')
    .addOption(jsonOption())
    .action(async (file: string, options: { readonly json?: true }) => {
      const read = readBody(await readBodyFile(file));
      if (!read.ok) throw new Unusable(read.issues);
      if (options.json) await session.write(json(bodyResult(read.value, read.issues)));
      else await session.write(plain(bodyTable(read.value)));
      sayIssues(session, read.issues);
      finish(0);
    });
