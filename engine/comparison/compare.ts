import type { Notion } from '../pattern/garment.ts';
import { type Fate, fates } from './fate.ts';
import type { KnownDraft, KnownGirth, KnownJoin, KnownSeam, KnownShape, KnownSheet } from './known-draft.ts';
import { movesBetween, type PieceMove } from './piece-moves.ts';
import type { Pinned, TakenMeasurement } from './taken.ts';

/** Two whole drafts compared. What of them was not compared is named: of that nothing is said. */
export interface Comparison {
  readonly before: Pick<KnownDraft, 'garment' | 'body'>;
  readonly after: Pick<KnownDraft, 'garment' | 'body'>;
  readonly measurements: readonly Fate<TakenMeasurement>[];
  readonly fitting: readonly Fate<Pinned>[];
  readonly styling: readonly Fate<StylingValue>[];
  readonly pieces: readonly PieceMove[];
  readonly seams: readonly Fate<KnownSeam>[];
  readonly joins: readonly Fate<KnownJoin>[];
  readonly girths: readonly Fate<KnownGirth>[];
  readonly shapes: readonly Fate<KnownShape>[];
  readonly notions: readonly Fate<Notion>[];
  readonly notCompared: readonly NotCompared[];
}

export interface StylingValue {
  readonly name: string;
  readonly value: number | string;
}

/** What was left out of a comparison, and why, in words. */
export interface NotCompared {
  readonly what: string;
  readonly why: string;
}

/** What changed from one draft to another, on which piece and by how much, as far as both are known. */
export function compareDrafts(before: KnownDraft, after: KnownDraft): Comparison {
  const [was, is] = [before, after];
  const sheets = was.sheet && is.sheet ? onSheets(was.sheet, is.sheet) : { pieces: [], notions: [] };
  const taken = was.taken && is.taken ? { was: was.taken, is: is.taken } : undefined;
  const styled = was.styling && is.styling ? { was: was.styling, is: is.styling } : undefined;
  const by = (item: { readonly name: string }): string => item.name;
  const shapes = fates(was.figures.shapes, is.figures.shapes, by);
  return {
    before: { garment: was.garment, body: was.body },
    after: { garment: is.garment, body: is.body },
    measurements: taken ? fates(taken.was.measurements, taken.is.measurements, by) : [],
    fitting: taken ? fates(taken.was.fitting, taken.is.fitting, ({ change }) => change) : [],
    styling: styled ? fates(valuesOf(styled.was), valuesOf(styled.is), by) : [],
    ...sheets,
    seams: fates(was.figures.seams, is.figures.seams, by),
    joins: fates(was.figures.joins, is.figures.joins, by),
    girths: fates(was.figures.girths, is.figures.girths, ({ level }) => level),
    shapes: shapes.filter((fate) => !isUnseen(fate, was, is)),
    notCompared: leftOut(was, is, shapes),
  };
}

const onSheets = (before: KnownSheet, after: KnownSheet): Pick<Comparison, 'pieces' | 'notions'> => ({
  pieces: movesBetween(before, after),
  notions: fates(before.notions, after.notions, ({ name }) => name),
});

const valuesOf = (styling: NonNullable<KnownDraft['styling']>): readonly StylingValue[] =>
  Object.entries(styling).map(([name, value]) => ({ name, value }));

/** A shape that only one of the drafts tells of, because of the other one not all are known. */
const isUnseen = ({ kind }: Fate<KnownShape>, before: KnownDraft, after: KnownDraft): boolean =>
  (kind === 'new' && before.figures.shapesPartly === true) ||
  (kind === 'gone' && after.figures.shapesPartly === true);

function leftOut(
  before: KnownDraft,
  after: KnownDraft,
  shapes: readonly Fate<KnownShape>[],
): readonly NotCompared[] {
  const unseen = shapes.filter((fate) => isUnseen(fate, before, after));
  const missing = (
    what: string,
    has: (draft: KnownDraft) => boolean,
    holds: string,
  ): readonly NotCompared[] => {
    const lacking = [...(has(before) ? [] : ['earlier']), ...(has(after) ? [] : ['later'])];
    return lacking.length === 0
      ? []
      : [{ what, why: `not known of the ${lacking.join(' nor of the ')} draft; ${holds}` }];
  };
  return [
    ...missing('measurements and fitting', ({ taken }) => taken !== undefined, 'a report.json says them'),
    ...missing('styling', ({ styling }) => styling !== undefined, 'a report.json says all of it'),
    ...missing(
      'outlines, cutting lines, allowances, notches, lines, marks, grain, counts to cut, and notions',
      ({ sheet }) => sheet !== undefined,
      'a sheet.svg shows them',
    ),
    ...(unseen.length > 0
      ? [
          {
            what: `shapes: ${unseen.map(({ name }) => name).join(', ')}`,
            why: 'a sheet, or a report of long ago, does not say them; a report.json does',
          },
        ]
      : []),
    {
      what: 'the words on the pieces, the steps of the construction and the order of sewing',
      why: 'only lines and figures are',
    },
  ];
}
