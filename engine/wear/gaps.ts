import type { Edge } from '../geometry/curve.ts';
import { alongChain } from './sewn.ts';
import type { Stand } from './stand.ts';
import type { Worn } from './worn.ts';

/** A stretch of an opening's edge. */
export type GapEdge =
  | 'neckline between the bust points'
  | 'neckline outside the bust points'
  | 'back neckline'
  | 'front armhole'
  | 'back armhole';

/** How far a stretch of an edge stands off the body, mm: on the wearer's left, or on both sides where its piece is cut whole. */
export interface Gap {
  readonly edge: GapEdge;
  /** At its worst place, and on the average. */
  readonly most: number;
  readonly mean: number;
  /** How much longer it is than the body just beneath it: what could be pinned out before it lies on the body. */
  readonly longer: number;
}

/** Which edges bound which opening, by the names that the drafts give them. */
const openings: readonly { readonly edge: GapEdge; readonly names: RegExp; readonly piece: RegExp }[] = [
  { edge: 'neckline outside the bust points', names: /neckline|^inner/, piece: /front|insert/ },
  { edge: 'back neckline', names: /neckline|^inner/, piece: /back/ },
  { edge: 'front armhole', names: /armhole|^outer/, piece: /front/ },
  { edge: 'back armhole', names: /armhole|^outer/, piece: /back/ },
];

/**
 * Whether an edge goes from one side of the front across to the other, and not up to a shoulder: it ends within a finger's
 * breadth of the princess seams, and spans the hollow between the breasts whatever its cut.
 */
function isAcross(edges: readonly Edge[], { name }: Edge): boolean {
  const i = edges.findIndex((each) => each.name === name);
  const beside = [edges.at(i - 1), edges[(i + 1) % edges.length]];
  return name === 'neckline' && beside.every((each) => each?.name !== 'shoulder');
}

/** How far necklines and armholes stand off the body, the front neckline apart between the bust points and outside them. */
export function gapsOf({ sewn, x }: Worn, stand: Stand): readonly Gap[] {
  const { seams, panels, sheet } = sewn;
  const sewnEdges = new Set(
    seams.flatMap(({ a, b }) => [...a, ...b].map(({ panel, edge }) => `${panel}/${edge}`)),
  );
  const chains = new Map<GapEdge, (readonly number[])[]>();
  for (const [panel, { panel: own }] of panels.entries()) {
    const opening = openings.filter(({ piece }) => own.side !== 'right' && piece.test(own.name));
    for (const edge of own.piece.edges) {
      const bounds = opening.find(({ names }) => names.test(edge.name));
      if (!bounds || sewnEdges.has(`${panel}/${edge.name}`)) continue;
      const inFront = bounds.edge === 'neckline outside the bust points';
      const stretch =
        inFront && isAcross(own.piece.edges, edge) ? 'neckline between the bust points' : bounds.edge;
      const chain = alongChain(sewn, [{ panel, edge: edge.name, reversed: false }]);
      chains.set(stretch, [...(chains.get(stretch) ?? []), chain]);
    }
  }
  const beneath = beneathOf(x, stand, sheet.cloth.thickness / 2);
  return [...chains].map(([edge, found]) => ({ edge, ...offBody(found, x, beneath) }));
}

/** The gap at a point, and the place of the body under it. */
type Beneath = (p: number) => { readonly gap: number; readonly place: readonly [number, number, number] };

function beneathOf(x: Float64Array, stand: Stand, off: number): Beneath {
  const out = new Float64Array(4);
  return (p) => {
    const [a = 0, b = 0, c = 0] = x.subarray(3 * p, 3 * p + 3);
    stand.obstacle(a, b, c, out);
    const [distance = 0, nx = 0, ny = 0, nz = 0] = out;
    const gap = Math.max(0, distance - off);
    return { gap, place: [a - gap * nx, b - gap * ny, c - gap * nz] };
  };
}

function offBody(
  chains: readonly (readonly number[])[],
  x: Float64Array,
  beneath: Beneath,
): Omit<Gap, 'edge'> {
  const gaps = new Map<number, number>();
  let longer = 0;
  for (const chain of chains)
    for (const [i, p] of chain.entries()) {
      const { gap, place } = beneath(p);
      gaps.set(p, gap);
      const before = chain[i - 1];
      if (before === undefined) continue;
      const [a, b, c] = beneath(before).place;
      const step = Math.hypot(
        ...[0, 1, 2].map((k) => (x[3 * p + k] as number) - (x[3 * before + k] as number)),
      );
      longer += step - Math.hypot(place[0] - a, place[1] - b, place[2] - c);
    }
  const all = [...gaps.values()];
  return { most: Math.max(...all), mean: all.reduce((sum, gap) => sum + gap, 0) / all.length, longer };
}
