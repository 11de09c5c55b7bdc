import { Command, Option } from 'commander';
import type { Body } from '../../engine/body/body.ts';
import type { FittingChange } from '../../engine/body/fitting.ts';
import { readBody } from '../../engine/body/read.ts';
import { cloths } from '../../engine/cloth/cloths.ts';
import { withLengthsIn } from '../../engine/text/with-lengths-in.ts';
import { cannotKnow } from '../../engine/wear/cannot-know.ts';
import { judged } from '../../engine/wear/judged.ts';
import { notWorn } from '../../engine/wear/panel-levels.ts';
import { fittedFurther, proposed } from '../../engine/wear/proposed.ts';
import { writeFiles } from '../files/write-files.ts';
import {
  askedGarment,
  draftedGarment,
  type GarmentOptions,
  takesGarment,
} from '../garment/drafted-garment.ts';
import { largest } from '../input/data-in.ts';
import { numberOf } from '../input/number-of.ts';
import { workersOption } from '../input/options.ts';
import { readBodyFile } from '../input/read-body.ts';
import { clothCalled, usualCloth } from '../input/read-cloth.ts';
import { readTextFile } from '../input/read-data.ts';
import { Unusable, unusable } from '../input/unusable.ts';
import { used } from '../input/used.ts';
import { answer } from '../output/answer.ts';
import { lengthsLine, readerOf, unitsWritten } from '../output/reader.ts';
import { say, tell } from '../output/say.ts';
import { issuesResult, json } from '../output/walk-result.ts';
import type { WornResult } from '../results/wear.ts';
import type { ExitCode, Session } from '../session.ts';
import { hangingAndRaised, type PutOn } from './hanging.ts';
import { putOn } from './put-on.ts';
import { wearBodies } from './wear-bodies.ts';
import { wearFiles } from './wear-files.ts';
import { notYet } from './wear-line.ts';
import { findingsTable, judgedTable } from './wear-table.ts';
import { foundResult } from './worn-result.ts';
import { quickLine, restLine, wornSaid } from './worn-said.ts';
import { wornWords } from './worn-words.ts';
import { refuseOverInput, writeFitting } from './write-fitting.ts';

interface WearOptions extends GarmentOptions {
  readonly bodies?: string;
  readonly workers: number;
  readonly out?: string;
  readonly cloth: string;
  readonly mesh?: string;
  readonly quick?: true;
  readonly draftedFor?: string;
  readonly writeFitting?: string;
  readonly maps?: true;
}

/** Size of triangles, mm: where nothing is said, and the largest, of a first answer. */
const [USUAL, COARSEST] = [12, 20];

const help = `
The garment’s outside is sewn up on a form computed from the measurements and hangs there in a woven cloth. What is told is as good as the form and the cloth: it is no substitute for a trial bodice. Left and right of the form are alike: where a fitting of one side made the garment’s differ, both are told.

Where there are sleeves the arms are raised then, to see whether the waist lifts.

  bodkin wear bodice --body leading-lady.yaml --out worn
  bodkin wear bodice --body understudy.yaml --drafted-for leading-lady.yaml --out worn --write-fitting altered.yaml`;

/** `bodkin wear`: a garment sewn and hung on the body that its measurements make, or on another. */
export const wearCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  takesGarment(
    new Command('wear')
      .description('sew a garment on a form of the body, hang it, and say how it sits and what to alter')
      .argument('<garment>', 'what to put on (see “bodkin list”)')
      .option('--body <file>', 'measurements of her who wears it, YAML or JSON')
      .addOption(
        new Option(
          '--bodies <file>',
          'many bodies, one JSON object a line or one row of a CSV table each; prints one JSON line each, and draws nothing',
        ).conflicts(['body', 'out', 'draftedFor', 'writeFitting', 'maps', 'json']),
      )
      .addOption(workersOption('threads for --bodies', 1))
      .option('--out <folder>', 'where to write pictures and figures; made if it is not there')
      .option(
        '--drafted-for <file>',
        'measurements that the garment is drafted from, where they are not hers',
      )
      .option(
        '--write-fitting <file>',
        'write the measurements that it is drafted from again, with what to alter as their fitting',
      )
      .option(
        '--maps',
        'also draw how far the cloth stands off the body, how far it is stretched and how hard it presses, in colours',
      )
      .option(
        '--cloth <name or file>',
        `what it is made of: ${cloths.map(({ name }) => name).join(', ')}, or a file of a cloth’s figures`,
        usualCloth,
      )
      .option('--mesh <mm>', `size of the triangles, 7 to ${COARSEST}; smaller is slower (default: ${USUAL})`)
      .option('--quick', `a first answer in about a second: triangles of ${COARSEST} mm, fewer pictures`),
  )
    .addHelpText('after', help)
    .action(async (name: string, options: WearOptions) => finish(await wear(session, name, options)));

const missing =
  'Say who wears it and where to write what is drawn: --body FILE --out FOLDER; or --bodies FILE.';

async function wear(session: Session, name: string, options: WearOptions): Promise<ExitCode> {
  const { body, out, draftedFor, writeFitting: rewritten } = options;
  const usual = options.quick ? COARSEST : USUAL;
  const spacing = options.mesh === undefined ? usual : numberOf('--mesh', options.mesh, 7, COARSEST);
  const cloth = await clothCalled(options.cloth);
  const asked = await askedGarment(session, name, options);
  if (options.bodies !== undefined)
    return wearBodies(session, asked, options.bodies, { ...options, cloth, spacing });
  if (body === undefined || out === undefined)
    throw unusable('option-missing', body === undefined ? '--body' : '--out', missing);
  const owner = draftedFor ?? body;
  if (rewritten !== undefined) await refuseOverInput(rewritten, [...new Set([body, owner])]);
  const drafted = await draftedGarment(session, asked, { ...options, body: owner });
  const { garment, report } = drafted;
  const data = draftedFor === undefined ? undefined : await readBodyFile(body);
  const reader = data === undefined ? drafted.reader : readerOf(session, options.units, data);
  const read = data === undefined ? undefined : readBody(data);
  const wearer = read ? used(read, reader.units) : drafted.body;
  const [unworn] = notWorn(garment);
  if (unworn !== undefined) throw new Unusable([notYet(unworn)]);
  const on = (body: Body): Promise<PutOn> => putOn(session, garment, cloth, body, spacing, hangingAndRaised);
  const worn = await on(wearer);
  const { hung, findings } = worn;
  const own = read ? (await on(drafted.body)).findings : undefined;
  const verdicts = judged(garment, findings, wearer, own);
  const alterations = proposed(verdicts);
  const fitting = fittedFurther(drafted.body.fitting, alterations);
  const title = `${garment.name}${read ? ` for ${garment.body}` : ''} worn by ${wearer.name}`;
  const words = { title, says: wornWords(title, verdicts, reader.units) };
  const said = wornSaid(worn, verdicts, read && garment.body, reader, options.quick ?? false);
  const drawing = { maps: options.maps ?? false, quick: options.quick ?? false };
  const drawn = await wearFiles(worn, words, reader, said, drawing);
  const files = [...drawn.keys(), 'worn.json'];
  const result = (): WornResult => ({
    ok: report.ok,
    garment: garment.name,
    body: wearer.name,
    draftedFor: garment.body,
    files,
    cloth: { name: cloth.name, weight: cloth.weight, source: cloth.source },
    ...foundResult(hung, findings, verdicts, fitting),
    cannotKnow,
    issues: issuesResult([...report.issues, ...(read?.issues ?? [])]),
  });
  await writeFiles(out, new Map([...drawn, ['worn.json', json(result())]]));
  const remarks = [`wrote ${files.join(', ')} into ${out}\n`];
  if (!drawn.has('worn.html')) remarks.push('worn.html is not written: run “npm run build” first\n');
  if (rewritten !== undefined) remarks.push(await rewrite(rewritten, owner, alterations, fitting));
  return answer(session, options.json, {
    report,
    reader,
    result,
    issues: read?.issues,
    words: async () => {
      const whose = read ? `${garment.name} for ${garment.body}, worn by ${wearer.name}` : title;
      await say(session, `${whose} in ${cloth.name}; ${lengthsLine(reader)}`);
      await say(session, findingsTable(findings, reader));
      await say(session, `${restLine(hung)}\n`);
      if (options.quick) await say(session, `${withLengthsIn(quickLine, reader.units)}\n`);
      await say(session, '\n');
      await say(session, judgedTable(verdicts, reader));
      if (read) await say(session, `“should be” is how the same sits on ${garment.body}\n`);
      await say(session, `\nWhat this cannot know:\n${cannotKnow.map((each) => `- ${each}\n`).join('')}`);
      for (const remark of remarks) tell(session, remark);
    },
  });
}

/** Writes the measurements again with their new fitting, if anything is to be altered; says what was done. */
async function rewrite(
  to: string,
  from: string,
  alterations: readonly FittingChange[],
  fitting: readonly FittingChange[],
): Promise<string> {
  if (alterations.length === 0) return `nothing is surely to be altered: ${to} is not written\n`;
  const text = await readTextFile(from, largest);
  const data = await readBodyFile(from);
  await writeFitting(to, text, fitting, unitsWritten(data) ?? 'mm');
  return `wrote ${to}: measurements with ${alterations.length} more of a fitting\n`;
}
