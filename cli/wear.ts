import { Command, Option } from 'commander';
import type { WovenCloth } from '../engine/cloth/cloth.ts';
import { cloths } from '../engine/cloth/cloths.ts';
import { bodyForm } from '../engine/form/body-form.ts';
import { viewNames } from '../engine/render/form/view.ts';
import { fixed } from '../engine/text/figure.ts';
import { lengthCell } from '../engine/text/length.ts';
import { type Findings, findingsOf } from '../engine/wear/findings.ts';
import { wornPicture } from '../engine/wear/picture.ts';
import { notWorn } from '../engine/wear/place.ts';
import { standOfForm } from '../engine/wear/stand-of-form.ts';
import { type Worn, worn } from '../engine/wear/worn.ts';
import { answer } from './answer.ts';
import { askedGarment, draftedGarment, type GarmentOptions, takesGarment } from './drafted-garment.ts';
import { lengthsLine, type Reader } from './reader.ts';
import type { WornResult } from './results/wear.ts';
import { say, tell } from './say.ts';
import type { ExitCode, Session } from './session.ts';
import { table } from './table.ts';
import { unusable } from './unusable.ts';
import { issuesResult, json } from './walk-result.ts';
import { writeFiles } from './write-files.ts';

interface WearOptions extends GarmentOptions {
  readonly out: string;
  readonly cloth: string;
  readonly mesh: string;
}

const help = `
The garment’s outside is sewn up on a form computed from the measurements and hangs there in a woven cloth. What is told is as good as the form and the cloth: it takes the place of no trial garment. Friction, the lining’s stiffness and arms are left out; garments that reach below the waist or have sleeves cannot be put on yet.

  bodkin wear bodice --body leading-lady.yaml --out worn`;

/** `bodkin wear`: a garment sewn and hung on the body that its measurements make. */
export const wearCommand = (session: Session, finish: (code: ExitCode) => void): Command =>
  takesGarment(
    new Command('wear')
      .description('sew a garment on a form of the body, hang it, and say how it sits')
      .argument('<garment>', 'what to put on (see “bodkin list”)')
      .requiredOption('--body <file>', 'measurements, YAML or JSON')
      .requiredOption('--out <folder>', 'where to write pictures and figures; made if it is not there')
      .addOption(
        new Option('--cloth <name>', 'what it is made of')
          .choices(cloths.map(({ name }) => name))
          .default('cotton'),
      )
      .option('--mesh <mm>', 'size of the triangles, 7 to 20; smaller is slower', '12'),
  )
    .addHelpText('after', help)
    .action(async (name: string, options: WearOptions) => finish(await wear(session, name, options)));

async function wear(session: Session, name: string, options: WearOptions): Promise<ExitCode> {
  const spacing = Number(options.mesh);
  if (!(spacing >= 7 && spacing <= 20))
    throw unusable('number-not-understood', '--mesh', '--mesh takes a number from 7 to 20.');
  const drafted = await draftedGarment(session, await askedGarment(session, name, options), options);
  const { garment, report, reader, body } = drafted;
  const unworn = notWorn(garment);
  if (unworn.length > 0)
    throw unusable(
      'not-worn-yet',
      unworn[0] ?? '',
      `It is not known yet how this is put on: ${unworn.join(', ')}. Put on the bodice or the trial, without a fitting for one side.`,
    );
  const cloth = cloths.find((each) => each.name === options.cloth) as WovenCloth;
  const form = bodyForm(body);
  const stand = standOfForm(form);
  const hung = worn(garment, cloth, stand, spacing);
  const findings = findingsOf(garment, hung, stand);
  const result = (): WornResult => ({
    ok: report.ok,
    garment: garment.name,
    body: garment.body,
    cloth: { name: cloth.name, weight: cloth.weight, source: cloth.source },
    mesh: { spacing, points: hung.sewn.sheet.count, triangles: hung.sewn.sheet.triangles.length / 3 },
    rest: { reached: hung.settled.atRest, steps: hung.settled.steps, residual: hung.settled.residual },
    ...withoutNothing(findings),
    issues: issuesResult(report.issues),
  });
  const title = `${garment.name} worn by ${garment.body}`;
  const files = new Map<string, string>([
    ...viewNames.map((view) => [`${view}.svg`, wornPicture(form, hung, view, title)] as const),
    ['worn.json', json(result())],
  ]);
  await writeFiles(options.out, files);
  return answer(session, options.json, {
    report,
    reader,
    result,
    words: async () => {
      await say(
        session,
        `${garment.name} for ${garment.body}, worn in ${cloth.name}; ${lengthsLine(reader)}`,
      );
      await say(session, tableOf(findings, reader));
      await say(session, `${restLine(hung)}\n`);
      tell(session, `wrote ${[...files.keys()].join(', ')} into ${options.out}\n`);
    },
  });
}

/** What was not found is left out. */
const withoutNothing = ({ bustPoint, side, ...rest }: Findings) => ({
  ...rest,
  ...(bustPoint && { bustPoint }),
  ...(side && { side }),
});

function tableOf(found: Findings, { units, columns }: Reader): string {
  const mm = (length: number): string => lengthCell(length, units);
  const rows: (readonly string[])[] = [
    ...found.ease.map(({ level, worn: now, drafted }) => [
      `ease at the ${level}`,
      mm(now),
      `drafted ${mm(drafted)}`,
    ]),
    ...found.waistLevel.map(({ at, above }) => [`waist seam above the waist, ${at}`, mm(above), '']),
    ...(found.bustPoint
      ? [
          ['bust point, to the side of hers', mm(found.bustPoint.across), ''],
          ['bust point, above hers', mm(found.bustPoint.up), ''],
        ]
      : []),
    ...(found.side
      ? [
          ['side seam at the waist, forward of her side', mm(found.side.atWaist), ''],
          ['side seam leans forward, degrees', fixed(found.side.lean, 1), ''],
        ]
      : []),
    ...found.gaps.map(({ edge, most, mean }) => [
      `${edge} off the body, at most`,
      mm(most),
      `on average ${mm(mean)}`,
    ]),
    ...found.strain.map(({ grain, most, over }) => [
      `stretched along the ${grain}, %`,
      fixed(100 * most, 1),
      `${fixed(100 * over, 1)} % of the cloth by more than 1 %`,
    ]),
    ['pressure, kPa', fixed(found.pressure, 2), ''],
  ];
  return table([{ title: 'finding' }, { title: 'worn', right: true }, { title: '' }], rows, columns);
}

const restLine = ({ settled: { atRest, residual, steps } }: Worn): string =>
  atRest
    ? `at rest after ${steps} steps`
    : `small folds were still shifting after ${steps} steps, by forces up to ${fixed(1000 * residual, 1)} mN`;
