import type { Garment } from '../pattern/garment.ts';
import type { Girth } from '../pattern/seam.ts';
import { type LevelName, levelNames } from './girth-map.ts';
import { levelAsHung } from './level-as-hung.ts';
import { edgeChain, type Sewn } from './sewn.ts';
import { type Stand, sectionAt } from './stand.ts';
import { stretchedRound } from './stretched-round.ts';
import { cutAt, tapeLength } from './tape-round.ts';
import { sleevesOf } from './what-meets.ts';
import type { Worn } from './worn.ts';

/** A figure beside what the draft meant it to be, mm. */
export interface Ease {
  readonly level: LevelName;
  /** A tape round the cloth, less a tape round the body at the same height, and less what the cloth near there is stretched by. */
  readonly worn: number;
  readonly drafted: number;
}

/**
 * Heights across the breadth of a tape, mm from its middle: it lies on all of them, and a fold that crosses one of them slantwise
 * would otherwise say 5 mm more than one that crosses the next.
 */
const breadth = [-10, -5, 0, 5, 10] as const;

/** Where there is no other level above or below, a level reaches so far, mm; heights are looked at so far apart. */
const REACH = 20;
const REACH_STEP = 5;

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * A tape goes round the body at its levels; under the bust, where a garment may be narrowest lower down, at the level of its own
 * seam, as it hangs, where that is below hers.
 */
function tapeAt({ level, parts }: Girth, worn: Worn, stand: Stand): number {
  const hers = stand.levels[level as LevelName];
  return level === 'under-bust' ? Math.min(hers, levelAsHung(parts, worn) ?? hers) : hers;
}

/** The ease at each level that the garment has. */
export function easeOf(garment: Garment, worn: Worn, stand: Stand): readonly Ease[] {
  const { x, sewn } = worn;
  const thickness = Math.PI * sewn.sheet.cloth.thickness;
  const round = bodyTriangles(garment, sewn);
  const corners = cornersOf(sewn, round);
  return levelNames.flatMap((level): readonly Ease[] => {
    const girth = garment.girths.find((each) => each.level === level);
    if (!girth) return [];
    const edges =
      girth.parts.every(({ kind, piece }) => kind === 'edge' && piece !== '') && level === 'waist';
    const rim = edges ? waistRim(sewn) : [];
    const rimHeight = rim.reduce((sum, p) => sum + (x[3 * p + 1] as number), 0) / rim.length;
    const rimTape = tapeLength(rim.flatMap((p) => [x[3 * p] as number, x[3 * p + 2] as number]));
    const triangles = edges ? undefined : corners;
    const middle = tapeAt(girth, worn, stand);
    const looser = triangles
      ? meanOf(
          breadth.map((up) => {
            const height = middle + up;
            return tapeLength(cutAt(x, triangles, height)) - bodyTape(stand, height);
          }),
        )
      : rimTape - bodyTape(stand, rimHeight);
    return [
      { level, worn: looser + thickness - stretchedNear(level, worn, stand, round), drafted: girth.ease },
    ];
  });
}

/**
 * The most that the breadth of a tape is stretched by all round, mm, as near to a level as to any other: what is too small is not
 * always so at the level itself, but above or below it.
 */
function stretchedNear(level: LevelName, { sewn, x }: Worn, { levels }: Stand, round: Int32Array): number {
  const here = levels[level];
  const others = Object.values(levels).filter((height) => height !== here);
  const below = (here + Math.max(...others.filter((height) => height < here), here - 2 * REACH)) / 2;
  const above = (here + Math.min(...others.filter((height) => height > here), here + 2 * REACH)) / 2;
  const steps = Math.ceil((above - below) / REACH_STEP);
  let most = 0;
  for (let i = 0; i <= steps; i++) {
    const height = below + (i * (above - below)) / steps;
    most = Math.max(most, meanOf(breadth.map((up) => stretchedRound(sewn.sheet, x, round, height + up))));
  }
  return most;
}

/** The triangles, by number, of what goes round the body, and not round an arm. */
function bodyTriangles(garment: Garment, { panels }: Sewn): Int32Array {
  const sleeves = sleevesOf(garment);
  return Int32Array.from(
    panels.flatMap(({ panel, triangles: [first, count] }) =>
      sleeves.has(panel.name) ? [] : Array.from({ length: count }, (_, i) => first + i),
    ),
  );
}

/** The corners of triangles, three each. */
const cornersOf = ({ sheet: { triangles } }: Sewn, of: Int32Array): Int32Array =>
  Int32Array.from(
    { length: 3 * of.length },
    (_, i) => triangles[3 * (of[Math.floor(i / 3)] as number) + (i % 3)] as number,
  );

/** A tape round the body at a height, mm. */
export function bodyTape(stand: Stand, height: number): number {
  const { points } = sectionAt(stand, height);
  const both: number[] = [];
  for (let i = 0; i < points.length; i += 2)
    both.push(points[i] as number, points[i + 1] as number, -(points[i] as number), points[i + 1] as number);
  return tapeLength(both);
}

const waistRim = (sewn: Sewn): readonly number[] => [
  ...new Set(
    sewn.panels.flatMap(({ panel }, i) =>
      panel.piece.edges.some(({ name }) => name === 'waist') ? edgeChain(sewn, i, 'waist') : [],
    ),
  ),
];
