import {
  type Body,
  cutWords,
  evaluate,
  fixed,
  type Issue,
  lengthCell,
  type MeasurementName,
  measurementNames,
  onlyTrue,
  readBody,
  type Unit,
  unitNames,
} from '../../../drafts/index.ts';
import { Unusable } from '../../unusable.ts';
import type { BodyFields } from '../body-form.ts';
import type { DraftAnswer, DraftRequest, KnownSize } from '../messages.ts';
import { draftingOf } from '../own-draft/drafting-of.ts';
import { checkRows } from './check-rows.ts';
import { readerUnits } from './made-draft.ts';
import { draftParts } from './parts.ts';
import { reconciledOf } from './reconciled.ts';
import { toldIssues } from './told-issues.ts';
import { wrongPieces } from './wrong-pieces.ts';

/**
 * Drafts and checks a garment, as `bodkin draft` does with the same measurements and choices. The sheet is written, and walked
 * again, where that is asked for: it takes three times as long as all the rest.
 */
export async function drafted(asked: DraftRequest): Promise<DraftAnswer> {
  const { number, body, choices, parts } = asked;
  const own = unitNames.find((unit) => unit === body.units) ?? 'mm';
  const units = readerUnits(body);
  const unmade = (found: readonly Issue[]): DraftAnswer => {
    const read = readBody(body);
    if (!read.ok) return { kind: 'drafted', number, issues: toldIssues(read.issues, units) };
    return {
      kind: 'drafted',
      number,
      sizes: sizesOf(read.value, own),
      issues: toldIssues(found, units),
      ...contradicted(found, body, own),
    };
  };
  const drafting = await draftingOf(asked).catch(refused);
  if ('issues' in drafting) return unmade(drafting.issues);
  const { draft, done } = drafting;
  const made = await done(() => evaluate(draft, body, choices)).catch(refused);
  if (!('ok' in made) || !made.ok) return unmade(made.issues);
  const evaluation = made.value;
  const { parts: wanted, report, holds } = await draftParts(evaluation, draft.choices, units, parts);
  // While something moves there is no time to look for what would do.
  const { issues } = holds ? await done(() => onlyTrue(draft, evaluation, report, holds)) : report;
  return {
    kind: 'drafted',
    number,
    sizes: sizesOf(evaluation.body, own),
    issues: toldIssues(issues, units),
    ...contradicted(issues, body, own),
    made: {
      ok: report.ok,
      proven: holds !== undefined,
      garment: report.garment,
      title: draft.title,
      body: evaluation.body.name,
      units,
      styling: evaluation.styling,
      pieces: evaluation.garment.pieces.map(({ number, name, cut }) => ({
        number,
        name,
        cut: cut.map(cutWords).join('; '),
      })),
      checks: checkRows(report, evaluation.garment, units),
      wrong: wrongPieces({ ...report, issues }, evaluation.garment, units),
      parts: wanted,
    },
  };
}

/** What is more likely than what contradicts, where anything does; it is looked for in no other case, for that takes time. */
function contradicted(
  issues: readonly Issue[],
  body: BodyFields,
  units: Unit,
): Pick<DraftAnswer, 'reconciled'> {
  const anything = body.reconcile === true || issues.some(({ code }) => code === 'reconcile-offered');
  return anything ? { reconciled: reconciledOf(body, units) } : {};
}

/** What stands in the way where code that draws cannot be asked; a fault of the program is thrown on. */
function refused(error: unknown): { readonly issues: readonly Issue[] } {
  if (error instanceof Unusable) return { issues: error.issues };
  throw error;
}

/** Every measurement as a tape shows it in her own unit. */
const sizesOf = (body: Body, units: Unit): Readonly<Record<MeasurementName, KnownSize>> =>
  Object.fromEntries(measurementNames.map((name) => [name, knownSize(name, body, units)])) as Readonly<
    Record<MeasurementName, KnownSize>
  >;

/** Parts of an inch in which an estimate is said: it is never known more finely. */
const parts = 8;

function knownSize(name: MeasurementName, { size, known }: Body, units: Unit): KnownSize {
  const text = (value: number): string =>
    name === 'shoulderSlope' ? fixed((value * 180) / Math.PI, 1) : lengthCell(value, units, 0, parts);
  const from = known[name];
  return {
    text: text(size[name]),
    from: from.from,
    ...(from.from === 'estimated' ? { spread: text(from.spread) } : {}),
  };
}
