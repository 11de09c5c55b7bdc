import {
  type Body,
  cutWords,
  evaluate,
  fixed,
  lengthCell,
  type MeasurementName,
  measurementNames,
  onlyTrue,
  readBody,
  type Unit,
  unitNames,
} from '../../../drafts/index.ts';
import type { DraftAnswer, DraftRequest, KnownSize } from '../messages.ts';
import { checkRows } from './check-rows.ts';
import { garmentCalled, readerUnits } from './made-draft.ts';
import { draftParts } from './parts.ts';
import { toldIssues } from './told-issues.ts';

/**
 * Drafts and checks a garment, as `bodkin draft` does with the same measurements and choices. The sheet is written, and walked
 * again, where that is asked for: it takes three times as long as all the rest.
 */
export async function drafted({ number, body, garment, choices, parts }: DraftRequest): Promise<DraftAnswer> {
  const own = unitNames.find((unit) => unit === body.units) ?? 'mm';
  const units = readerUnits(body);
  const draft = garmentCalled(garment);
  const made = evaluate(draft, body, choices);
  if (!made.ok) {
    const read = readBody(body);
    if (!read.ok) return { kind: 'drafted', number, issues: toldIssues(read.issues, units) };
    return {
      kind: 'drafted',
      number,
      sizes: sizesOf(read.value, own),
      issues: toldIssues(made.issues, units),
    };
  }
  const evaluation = made.value;
  const { parts: wanted, report, holds } = await draftParts(evaluation, draft.choices, units, parts);
  // While something moves there is no time to look for what would do.
  const { issues } = holds ? onlyTrue(draft, evaluation, report, holds) : report;
  return {
    kind: 'drafted',
    number,
    sizes: sizesOf(evaluation.body, own),
    issues: toldIssues(issues, units),
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
      parts: wanted,
    },
  };
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
