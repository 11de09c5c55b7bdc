import type { MeasurementName } from '../body/body.ts';
import type { FittingChange, PlainChange } from '../body/fitting.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Findings } from './findings.ts';
import type { Gap, GapEdge } from './gaps.ts';
import type { LevelName } from './girth-map.ts';

/** What a figure stands and falls with. */
export type RestsOn = 'measurements' | 'assumed posture';

/** A figure before it is judged. */
export interface Figure {
  readonly finding: string;
  readonly unit?: '%';
  readonly of: (found: Findings) => number | undefined;
  /** On anybody, where no garment worn by its owner is there to compare with. */
  readonly should: number;
  readonly band: number;
  /** Of a figure beside that of the owner, in which much of what the form assumes falls out; and of one alone. */
  readonly within: { readonly beside: number; readonly alone: number };
  readonly restsOn: RestsOn;
  /** Less than it should be is no fault. */
  readonly onlyMore?: true;
  /** The measurement of the wearer that it stands and falls with. */
  readonly by?: MeasurementName;
  readonly change?: (off: number) => FittingChange | undefined;
}

/** What a tape round cloth loses to its folds, and to being level, where the owner wears it: medians over the invented bodies, mm. */
const lost: Readonly<Record<LevelName, number>> = { bust: 20, 'under-bust': 5, waist: 5, hip: 10 };

/** Stitching lines that a girth grows or shrinks by: two layers, left and right. */
const LAYERS = 4;

/** What is pinned out of the back at the waist raises the waist seam there, beside that in front, by three quarters of it. */
const PINNED = 1.3;

const inOrOut = (
  off: number,
  place:
    | { readonly seam: 'side seam'; readonly level: 'bust' | 'waist' }
    | { readonly seam: 'front princess seam'; readonly level: 'under-bust' },
): FittingChange => ({ kind: off > 0 ? 'take in' : 'let out', ...place, mm: Math.abs(off) / LAYERS });

/** All that is judged of a worn garment, and what a fitter would do about each. `own` is what is found of it on whom it was drafted for. */
export function figures(garment: Garment, found: Findings, own: Findings | undefined): readonly Figure[] {
  const strapped = garment.pieces.some(({ name }) => /\bstrap\b/.test(name));
  const drafted = (level: LevelName): number =>
    (found.ease.find((ease) => ease.level === level)?.drafted ?? 0) - lost[level];
  const worn =
    (level: LevelName) =>
    ({ ease }: Findings): number | undefined =>
      ease.find((each) => each.level === level)?.worn;
  const gapAt = (edge: GapEdge, findings: Findings | undefined): Gap | undefined =>
    findings?.gaps.find((each) => each.edge === edge);
  return [
    {
      finding: 'ease at the bust',
      of: worn('bust'),
      should: drafted('bust'),
      band: 15,
      within: { beside: 8, alone: 12 },
      restsOn: 'measurements',
      by: 'bustGirth',
      change: (off) => inOrOut(off, { seam: 'side seam', level: 'bust' }),
    },
    {
      finding: 'ease at the under-bust',
      of: worn('under-bust'),
      should: drafted('under-bust'),
      band: 12,
      within: { beside: 8, alone: 12 },
      restsOn: 'measurements',
      by: 'underBustGirth',
      change: (off) => inOrOut(off, { seam: 'front princess seam', level: 'under-bust' }),
    },
    {
      finding: 'ease at the waist',
      of: worn('waist'),
      should: drafted('waist'),
      band: 12,
      within: { beside: 10, alone: 14 },
      restsOn: 'measurements',
      by: 'waistGirth',
      change: (off) => inOrOut(off, { seam: 'side seam', level: 'waist' }),
    },
    {
      finding: 'bust point above hers',
      of: ({ bustPoint }) => bustPoint?.up,
      should: 0,
      band: 8,
      within: { beside: 5, alone: 15 },
      restsOn: 'measurements',
      by: 'neckShoulderPointToBustPoint',
      change: (off) => ({ kind: off > 0 ? 'lower bust point' : 'raise bust point', mm: Math.abs(off) }),
    },
    {
      finding: 'bust point to the side of hers',
      of: ({ bustPoint }) => bustPoint?.across,
      should: 0,
      band: 8,
      within: { beside: 5, alone: 6 },
      restsOn: 'measurements',
      by: 'bustPointWidth',
    },
    {
      finding: 'waist seam above her waist, on the whole',
      of: ({ waistLevel }) => meanOf(waistLevel.map(({ above }) => above)),
      should: 0,
      band: 6,
      within: { beside: 5, alone: 15 },
      restsOn: 'assumed posture',
      by: 'backNeckPointToWaist',
      // Half of what a strap is longer lies before the shoulder and half behind, so the waist sinks by half.
      ...(strapped && {
        change: (off: number): FittingChange => ({
          kind: off > 0 ? 'lengthen strap' : 'shorten strap',
          mm: 2 * Math.abs(off),
        }),
      }),
    },
    {
      finding: 'waist seam higher in front than behind',
      of: ({ waistLevel }) => {
        const at = (place: string) => waistLevel.find((each) => each.at === place)?.above;
        const [front, back] = [at('centre front'), at('centre back')];
        return front === undefined || back === undefined ? undefined : front - back;
      },
      should: 8,
      band: 8,
      within: { beside: 6, alone: 20 },
      restsOn: 'assumed posture',
      by: 'backNeckPointToWaist',
      // The other way round no change was found: a back that is cut longer leaves the difference as it is.
      change: (off) => (off > 0 ? { kind: 'sway back', mm: PINNED * off } : undefined),
    },
    {
      finding: 'side seam at the waist, forward of her side',
      of: ({ side }) => side?.atWaist,
      should: 0,
      band: 15,
      within: { beside: 4, alone: 5 },
      restsOn: 'measurements',
    },
    ...gapEdges.map(({ edge, wedge }): Figure => {
      const longer = (gapAt(edge, found)?.longer ?? 0) - (gapAt(edge, own)?.longer ?? 0);
      return {
        finding: `${edge} off the body`,
        of: (findings) => gapAt(edge, findings)?.most,
        should: 0,
        band: 10,
        within: { beside: 8, alone: 20 },
        restsOn: 'assumed posture',
        onlyMore: true,
        // Under a strap a wedge from the armhole leaves it as it was.
        ...(wedge &&
          !(strapped && wedge === 'wedge from armhole') && { change: () => ({ kind: wedge, mm: longer }) }),
      };
    }),
    {
      finding: 'waist seam lifts as the arms rise, at most',
      of: ({ arms }) => arms && Math.max(...arms.lift.map(({ by }) => by)),
      should: 0,
      band: 20,
      within: { beside: 5, alone: 8 },
      restsOn: 'assumed posture',
      onlyMore: true,
    },
    ...(['weft', 'warp'] as const).map(
      (grain): Figure => ({
        finding: `stretched along the ${grain}`,
        unit: '%',
        of: ({ strain }) => 100 * (strain.find((each) => each.grain === grain)?.most ?? 0),
        should: 0,
        band: 2,
        within: { beside: 1, alone: 1 },
        restsOn: 'measurements',
        onlyMore: true,
      }),
    ),
  ];
}

/**
 * What takes the slack out of an edge. Between the bust points an edge spans a hollow: it is to stand off there. Outside them,
 * and behind, no wedge was found that surely makes a gap less.
 */
const gapEdges: readonly { readonly edge: GapEdge; readonly wedge?: PlainChange }[] = [
  { edge: 'neckline outside the bust points' },
  { edge: 'back neckline' },
  { edge: 'front armhole', wedge: 'wedge from armhole' },
  { edge: 'back armhole' },
];

const meanOf = (values: readonly number[]): number | undefined =>
  values.length === 0 ? undefined : values.reduce((sum, value) => sum + value, 0) / values.length;
