import { Membrane } from '../cloth/membrane.ts';
import { triangleAreas } from '../cloth/sheet.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Girth } from '../pattern/seam.ts';
import { type Gap, gapsOf } from './gaps.ts';
import { crossingsOf, type LevelName, levelNames } from './girth-map.ts';
import { levelAsHung } from './level-as-hung.ts';
import { sleevesOf } from './place.ts';
import { alongChain, type Sewn, type SewnPanel } from './sewn.ts';
import { type Stand, sectionAt } from './stand.ts';
import { stationsAlong } from './stations.ts';
import { stretchedRound } from './stretched-round.ts';
import { cutAt, tapeLength } from './tape-round.ts';
import type { Worn } from './worn.ts';
import type { PanelEdge } from './worn-seam.ts';

/** A figure beside what the draft meant it to be, mm. */
export interface Ease {
  readonly level: LevelName;
  /** A tape round the cloth, less a tape round the body at the same height, and less what the cloth near there is stretched by. */
  readonly worn: number;
  readonly drafted: number;
}

/** How far threads of one direction are stretched: at the tightest hundredth of the cloth, and on how much of it by over 1 %. */
export interface Strain {
  readonly grain: 'weft' | 'warp';
  readonly most: number;
  readonly over: number;
}

/** What became of the waist seam when both arms were raised, mm and degrees from where they hang. */
export interface ArmsRaised {
  readonly to: number;
  /** How much higher the waist seam then lay, place by place. */
  readonly lift: readonly { readonly at: string; readonly by: number }[];
  /** How far they may be raised before it lies higher by 10 mm anywhere; as far as they were raised, where it never did. */
  readonly free: number;
}

/** What is found on a worn garment, in a fitting's terms; mm and degrees, the wearer's left where there are two. */
export interface Findings {
  readonly ease: readonly Ease[];
  /** Height of the waist seam above the body's waist, place by place. */
  readonly waistLevel: readonly { readonly at: string; readonly above: number }[];
  /** The garment's bust point from the body's: to the side, and up. None where no edge carries the mark. */
  readonly bustPoint: { readonly across: number; readonly up: number } | undefined;
  /** The side seam at the waist, forward of the body's side; and how far it leans forward from below up, degrees. */
  readonly side: { readonly atWaist: number; readonly lean: number } | undefined;
  readonly strain: readonly Strain[];
  /** The greatest pressure of the cloth on the body, kPa. */
  readonly pressure: number;
  readonly gaps: readonly Gap[];
  /** Height of the hem above the floor; none where it hangs from no waist. */
  readonly hem?: { readonly lowest: number; readonly highest: number; readonly mean: number } | undefined;
  /** None where there are no sleeves, or no arm was raised. */
  readonly arms?: ArmsRaised | undefined;
}

/** Everything that is found on a worn garment. */
export const findingsOf = (garment: Garment, worn: Worn, stand: Stand): Findings => ({
  ease: easeOf(garment, worn, stand),
  waistLevel: waistLevels(garment, worn, stand),
  bustPoint: bustPointOf(garment, worn, stand),
  side: sideOf(worn, stand),
  strain: strainOf(worn),
  pressure: pressureOf(worn),
  gaps: gapsOf(worn, stand),
  hem: hemOf(garment, worn),
});

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

function easeOf(garment: Garment, worn: Worn, stand: Stand): readonly Ease[] {
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

const edgeChain = (sewn: Sewn, panel: number, edge: string): readonly number[] =>
  alongChain(sewn, [{ panel, edge, reversed: false }]);

const waistRim = (sewn: Sewn): readonly number[] => [
  ...new Set(
    sewn.panels.flatMap(({ panel }, i) =>
      panel.piece.edges.some(({ name }) => name === 'waist') ? edgeChain(sewn, i, 'waist') : [],
    ),
  ),
];

function hemOf({ girths }: Garment, { x, sewn }: Worn): Findings['hem'] {
  const edges = girths.filter(({ level }) => level === 'hem').flatMap(({ parts }) => parts);
  const heights = sewn.panels.flatMap(({ panel }, i) =>
    edges.flatMap((part) =>
      part.kind === 'edge' && part.piece === panel.name
        ? edgeChain(sewn, i, part.edge).map((p) => x[3 * p + 1] as number)
        : [],
    ),
  );
  if (heights.length === 0) return undefined;
  return {
    lowest: Math.min(...heights),
    highest: Math.max(...heights),
    mean: heights.reduce((sum, height) => sum + height, 0) / heights.length,
  };
}

/** Height of the waist seam above the body's waist, place by place. */
export function waistLevels({ joins }: Garment, { x, sewn }: Worn, stand: Stand): Findings['waistLevel'] {
  // Where left and right differ, both are told.
  const sided = sewn.panels.some(({ panel }) => panel.piece.oneOf);
  const told = new Map<string, number>();
  for (const join of joins) {
    if (join.kind === 'along' || join.a.edge !== 'waist') continue;
    const place = join.name.replace(/^.*waist at (the )?/, '');
    for (const [index, { panel }] of sewn.panels.entries()) {
      if (panel.name !== join.a.piece || (!sided && panel.side === 'right')) continue;
      const names = panel.piece.edges.map(({ name }) => name);
      const after = names[(names.indexOf('waist') + 1) % names.length];
      const chain = edgeChain(sewn, index, 'waist');
      const corner = after === join.a.seam ? chain.at(-1) : chain[0];
      const at = sided && join.kind === 'across' ? `${place}, ${panel.side}` : place;
      // A skirt's waist is that of the bodice above it.
      if (corner !== undefined && !told.has(at))
        told.set(at, (x[3 * corner + 1] as number) - stand.levels.waist);
    }
  }
  return [...told].map(([at, above]) => ({ at, above }));
}

/** The bust point is marked at bust level on the seam that runs nearest to it: the one between two pieces of the front. */
function bustPointOf(garment: Garment, { x, sewn }: Worn, stand: Stand): Findings['bustPoint'] {
  const girth = garment.girths.find(({ level }) => level === 'bust');
  const marks = new Set(girth?.parts.flatMap((part) => (part.kind === 'line' ? [part.line] : [])));
  const crossings = crossingsOf(garment);
  const inFront = ({ panel }: PanelEdge): boolean => {
    const first = crossings.get(sewn.panels[panel]?.panel.name ?? '')?.[0];
    return first !== undefined && first.atLeft + first.atRight > 1;
  };
  for (const { a, b } of sewn.seams)
    for (const ref of [...a, ...b].every(inFront) ? [...a, ...b] : []) {
      const { panel, edgeStarts, mesh, points } = sewn.panels[ref.panel] as SewnPanel;
      const notch = panel.piece.notches.find(({ name, edge }) => marks.has(name) && edge === ref.edge);
      if (!notch || panel.side !== 'left') continue;
      const start = edgeStarts.get(notch.edge) ?? 0;
      const at = stationsAlong(sewn.stations, panel, notch.edge);
      let nearest = 0;
      for (const [i, place] of at.entries())
        if (Math.abs(place - notch.at) < Math.abs((at[nearest] ?? 0) - notch.at)) nearest = i;
      const p = 3 * (points[(start + nearest) % mesh.borderCount] as number);
      return { across: (x[p] as number) - stand.bustPoint[0], up: (x[p + 1] as number) - stand.bustPoint[1] };
    }
  return undefined;
}

function sideOf({ x, sewn }: Worn, stand: Stand): Findings['side'] {
  const seam = sewn.seams.find(({ a, b }) =>
    [...a, ...b].every(({ panel, edge }) => edge === 'side' && sewn.panels[panel]?.panel.side === 'left'),
  );
  if (!seam) return undefined;
  const height = (p: number): number => x[3 * p + 1] as number;
  const sorted = [...alongChain(sewn, seam.a)].sort((a, b) => height(a) - height(b));
  const [low, high] = [sorted[0], sorted.at(-1)];
  if (low === undefined || high === undefined) return undefined;
  const { points } = sectionAt(stand, stand.levels.waist);
  let widest = 0;
  for (let i = 0; i < points.length; i += 2)
    if ((points[i] as number) > (points[2 * widest] as number)) widest = i / 2;
  const { waist } = stand.levels;
  const atWaist = Math.abs(height(low) - waist) < Math.abs(height(high) - waist) ? low : high;
  const forward = (x[3 * high + 2] as number) - (x[3 * low + 2] as number);
  return {
    atWaist: (x[3 * atWaist + 2] as number) - (points[2 * widest + 1] as number),
    lean: (180 * Math.atan2(forward, height(high) - height(low))) / Math.PI,
  };
}

/** The tightest hundredth of the cloth is told, since a corner where a strap is sewn on says nothing of the dress. */
const TIGHTEST = 0.01;

function strainOf({ sewn, x }: Worn): readonly Strain[] {
  const strains = new Membrane(sewn.sheet).strains(x);
  const areas = triangleAreas(sewn.sheet);
  const whole = areas.reduce((sum, area) => sum + area, 0);
  return (['weft', 'warp'] as const).map((grain, k): Strain => {
    const order = Array.from(areas, (_, t) => t).sort(
      (a, b) => (strains[3 * b + k] as number) - (strains[3 * a + k] as number),
    );
    let passed = 0;
    let most = 0;
    let over = 0;
    for (const t of order) {
      const strain = strains[3 * t + k] as number;
      const area = areas[t] as number;
      passed += area;
      if (most === 0 && passed >= TIGHTEST * whole) most = strain;
      if (strain > 0.01) over += area;
    }
    return { grain, most, over: over / whole };
  });
}

function pressureOf({ forces, areas }: Worn): number {
  let most = 0;
  for (let i = 0; i < forces.length; i++)
    most = Math.max(most, (forces[i] as number) / Math.max(1, areas[i] as number));
  return most * 1000;
}
