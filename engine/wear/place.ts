import type { Garment } from '../pattern/garment.ts';
import type { LevelCrossing } from './girth-map.ts';
import { panelLevels } from './panel-levels.ts';
import { goreHeight, goresLaid, onCone } from './place-skirt.ts';
import { roundArm } from './place-sleeve.ts';
import { pushOut } from './push-out.ts';
import type { Sewn, SewnPanel } from './sewn.ts';
import { type HalfSection, placeOn, type Stand, sectionAt, shoulderAt } from './stand.ts';
import { metBy, sleevesOf } from './what-meets.ts';

/** Cloth is laid so far off the body to begin with, mm. */
const CLEAR = 6;

/** From this share of the way from bust to shoulder on, panels lean over towards the ridge of the shoulder. */
const LEANS_FROM = 0.35;

/**
 * Lays the sewn panels round a body, outside it: at each level a panel covers the share of the girth that it was drafted to
 * cover, between the levels in proportion, and above the bust it goes up to the ridge of the shoulder. Where panels meet
 * their places are averaged. Answers x, y, z of every point.
 */
export function laidRound(garment: Garment, { sheet, panels, seams }: Sewn, stand: Stand): Float64Array {
  const crossings = panelLevels(
    garment,
    panels.map(({ panel }) => panel),
    seams,
  );
  const sections = new Map<number, HalfSection>();
  const section = (height: number): HalfSection => {
    const step = Math.round(height / 4);
    const known = sections.get(step) ?? sectionAt(stand, 4 * step);
    sections.set(step, known);
    return known;
  };
  const ridges = new Map<number, readonly [number, number]>();
  const ridge = (x: number): readonly [number, number] => {
    const step = Math.round(x / 4);
    const known = ridges.get(step) ?? shoulderAt(stand, 4 * step);
    ridges.set(step, known);
    return known;
  };
  const tops = topsOf(panels, crossings);
  const gore = goresLaid(
    panels.flatMap((panel) => {
      const hip = hipOf(crossings.get(panel.panel.name));
      return hip && panel.panel.side !== 'right' ? [{ panel, hip }] : [];
    }),
  );
  const sums = new Float64Array(3 * sheet.count);
  const times = new Float64Array(sheet.count);
  const put = (p: number, x: number, y: number, z: number): void => {
    for (const [k, value] of [x, y, z].entries()) sums[3 * p + k] = (sums[3 * p + k] as number) + value;
    times[p] = (times[p] as number) + 1;
  };
  const sleeves = sleevesOf(garment);
  for (const made of panels) {
    const { panel, mesh, points } = made;
    if (sleeves.has(panel.name)) continue;
    const own = crossings.get(panel.name);
    const laid = gore(made);
    const hip = hipOf(own);
    if (laid && hip) {
      for (const [i, p] of points.entries()) {
        const [x, y] = [mesh.points[2 * i] as number, mesh.points[2 * i + 1] as number];
        const height = goreHeight(stand, hip, y);
        const [cx, cz] = onCone(laid, x, y, section(Math.max(height, stand.levels.hip)));
        put(p, panel.side === 'right' ? -cx : cx, height, cz);
      }
      continue;
    }
    if (!own) throw new RangeError(`“${panel.name}” crosses no level of the body.`);
    const top = isBehind(own) ? tops.behind : tops.before;
    for (const [i, p] of points.entries()) {
      const drawnX = mesh.points[2 * i] as number;
      const y = mesh.points[2 * i + 1] as number;
      const sign = panel.side === 'right' || (panel.side === 'whole' && drawnX < 0) ? -1 : 1;
      const x = panel.side === 'whole' ? Math.abs(drawnX) : drawnX;
      const { share, height, risen } = onLevels(own, x, y, top.y, stand);
      const [sx, sz] = placeOn(section(Math.min(height, stand.underarm)), Math.max(0, Math.min(1, share)));
      const over = Math.max(0, (risen - LEANS_FROM) / (1 - LEANS_FROM));
      const across =
        tops.behind.left + ((x - top.left) / (top.right - top.left)) * (tops.behind.right - tops.behind.left);
      const ridgeX = Math.max(20, Math.min(tops.behind.right + 10, across));
      const [ridgeY, ridgeZ] = ridge(ridgeX);
      const rising = stand.levels.bust + (ridgeY - stand.levels.bust) * risen;
      const lean = over * over;
      put(
        p,
        sign * (sx * (1 - over) + ridgeX * over),
        risen > 0 ? rising : height,
        sz * (1 - lean) + ridgeZ * lean,
      );
    }
  }
  // Round the arms last: where a sleeve is sewn in, the armhole says where it lies.
  const sewnIn = times.map((count) => (count > 0 ? 1 : 0));
  for (const made of panels) {
    if (!sleeves.has(made.panel.name)) continue;
    const laid = roundArm(made, stand);
    for (const [i, p] of made.points.entries()) {
      if (sewnIn[p] === 1) continue;
      const [x, y, z] = laid(made.mesh.points[2 * i] as number, made.mesh.points[2 * i + 1] as number);
      put(p, made.panel.side === 'right' ? -x : x, y, z);
    }
  }
  for (let k = 0; k < sums.length; k++) sums[k] = (sums[k] as number) / (times[Math.floor(k / 3)] as number);
  pushOut(sums, metBy(garment, { panels, sheet }, stand), CLEAR);
  return sums;
}

/** Where a gore crosses the hip. */
const hipOf = (own: readonly LevelCrossing[] | undefined): LevelCrossing | undefined =>
  own?.find(({ level }) => level === 'hip');

const isBehind = (own: readonly LevelCrossing[]): boolean => (own[0]?.atLeft ?? 0) < (own[0]?.atRight ?? 0);

/** The share of half the girth, the height, and above the bust how much of the way to the shoulder, of a place on a panel. */
function onLevels(own: readonly LevelCrossing[], x: number, y: number, topY: number, stand: Stand) {
  const shareAt = ({ left, right, atLeft, atRight }: LevelCrossing): number =>
    atLeft + ((x - left) / (right - left)) * (atRight - atLeft);
  const first = own[0] as LevelCrossing;
  const heightOf = ({ level }: LevelCrossing): number => stand.levels[level];
  if (y <= first.y || own.length === 1) {
    const height = heightOf(first) + first.y - y;
    const risen = first.level === 'bust' && y < first.y ? Math.min(1, (first.y - y) / (first.y - topY)) : 0;
    return { share: shareAt(first), height, risen };
  }
  const below = own.findIndex((crossing) => crossing.y >= y);
  const to = own[below < 0 ? own.length - 1 : below] as LevelCrossing;
  const from = own[below < 0 ? own.length - 2 : below - 1] as LevelCrossing;
  const t = (y - from.y) / (to.y - from.y);
  return {
    share: shareAt(from) * (1 - Math.min(1, t)) + shareAt(to) * Math.min(1, t),
    height: heightOf(from) + (heightOf(to) - heightOf(from)) * t,
    risen: 0,
  };
}

interface Top {
  readonly y: number;
  readonly left: number;
  readonly right: number;
}

/** Where front and back end on the shoulder: the height as drawn, and between which x. */
function topsOf(
  panels: readonly SewnPanel[],
  crossings: ReadonlyMap<string, readonly LevelCrossing[]>,
): { readonly before: Top; readonly behind: Top } {
  const of = (behind: boolean): Top => {
    let y = Infinity;
    let left = Infinity;
    let right = -Infinity;
    for (const { panel, edgeStarts } of panels) {
      const own = crossings.get(panel.name);
      const start = edgeStarts.get('shoulder');
      if (!own || start === undefined || isBehind(own) !== behind) continue;
      const edge = panel.piece.edges.find(({ name }) => name === 'shoulder');
      const ends = edge ? outlineEnds(edge.curves) : [];
      for (const end of ends) {
        y = Math.min(y, end.y);
        left = Math.min(left, end.x);
        right = Math.max(right, end.x);
      }
    }
    return { y, left, right };
  };
  return { before: of(false), behind: of(true) };
}

const outlineEnds = (curves: SewnPanel['panel']['piece']['edges'][number]['curves']) => [
  ...curves.slice(0, 1).map(({ from }) => from),
  ...curves.slice(-1).map(({ to }) => to),
];
