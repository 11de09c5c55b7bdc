import {
  type Body,
  cutWords,
  type Evaluation,
  evaluate,
  fixed,
  garments,
  type Issue,
  lengthCell,
  type MeasurementName,
  measurementNames,
  notchesOf,
  provenSheet,
  readBody,
  type Unit,
  unitNames,
  withLengthsIn,
} from '../../../drafts/index.ts';
import { json, walkResult } from '../../walk-result.ts';
import type { DraftPart } from '../draft-parts.ts';
import type { DraftAnswer, DraftRequest, KnownSize, MadeGarment, PageIssue } from '../messages.ts';
import { checkRows } from './check-rows.ts';
import { draftParts } from './parts.ts';

/** Drafts, checks and writes a garment, as `bodkin draft` does with the same measurements and choices. */
export function drafted({ number, body, garment, choices, parts }: DraftRequest): DraftAnswer {
  const own = unitNames.find((unit) => unit === body.units) ?? 'mm';
  const units = own === 'in' ? 'in' : 'mm';
  const draft = Object.values(garments).find(({ name }) => name === garment) ?? garments.dress;
  const read = readBody(body);
  if (!read.ok) return { kind: 'drafted', number, issues: told(read.issues, units) };
  const sizes = sizesOf(read.value, own);
  const made = evaluate(draft, body, choices);
  if (!made.ok) return { kind: 'drafted', number, sizes, issues: told(made.issues, units) };
  const { report, ...written } = writtenGarment(made.value, units, parts);
  return {
    kind: 'drafted',
    number,
    sizes,
    issues: told(report.issues, units),
    made: { ...written, title: draft.title },
  };
}

function writtenGarment(
  evaluation: Evaluation,
  units: 'mm' | 'in',
  wanted: readonly DraftPart[],
): Omit<MadeGarment, 'title'> & Pick<Evaluation, 'report'> {
  const { garment, styling, body } = evaluation;
  const proven = provenSheet(evaluation, {
    date: undefined,
    units,
    notches: notchesOf(styling),
  });
  const { sheet, report } = proven;
  return {
    ok: report.ok,
    garment: report.garment,
    body: body.name,
    units,
    styling,
    pieces: garment.pieces.map(({ number, name, cut }) => ({
      number,
      name,
      cut: cut.map(cutWords).join('; '),
    })),
    checks: checkRows(report, units),
    files: [
      { name: 'sheet.svg', text: sheet },
      { name: 'report.json', text: json(walkResult(report, evaluation)) },
    ],
    parts: draftParts({ evaluation, proven, units }, wanted),
    report,
  };
}

/** Issues with their lengths in the reader's unit, gravest first. */
const told = (issues: readonly Issue[], units: Unit): readonly PageIssue[] =>
  (['error', 'warning', 'note'] as const).flatMap((severity) =>
    issues
      .filter((issue) => issue.severity === severity)
      .map(({ code, path, message }) => ({ code, severity, path, message: withLengthsIn(message, units) })),
  );

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
