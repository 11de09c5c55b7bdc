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

/** How far a stretch of an edge stands off the body, on the wearer's left, mm. */
export interface Gap {
  readonly edge: GapEdge;
  /** At its worst place, and on the average. */
  readonly most: number;
  readonly mean: number;
  /** How much longer it is than the body just beneath it: what could be pinned out before it lies on the body. */
  readonly longer: number;
}

/** Which edges bound which opening, by the names that the drafts give them. */
const openings: readonly {
  readonly edges: RegExp;
  readonly piece: RegExp;
  readonly stretchAt: (x: number, bustPoint: number) => GapEdge;
}[] = [
  {
    edges: /neckline|^inner/,
    piece: /front|insert/,
    // Between the breasts cloth spans the hollow, whatever its cut.
    stretchAt: (x, bustPoint) =>
      x < bustPoint ? 'neckline between the bust points' : 'neckline outside the bust points',
  },
  { edges: /neckline|^inner/, piece: /back/, stretchAt: () => 'back neckline' },
  { edges: /armhole|^outer/, piece: /front/, stretchAt: () => 'front armhole' },
  { edges: /armhole|^outer/, piece: /back/, stretchAt: () => 'back armhole' },
];

/** How far necklines and armholes stand off the body, the front neckline apart between the bust points and outside them. */
export function gapsOf({ sewn, x }: Worn, stand: Stand): readonly Gap[] {
  const { seams, panels, sheet } = sewn;
  const sewnEdges = new Set(
    seams.flatMap(({ a, b }) => [...a, ...b].map(({ panel, edge }) => `${panel}/${edge}`)),
  );
  const beneath = beneathOf(x, stand, sheet.cloth.thickness / 2);
  return openings.flatMap(({ edges, piece, stretchAt }): readonly Gap[] => {
    const chains = panels.flatMap(({ panel }, i) =>
      panel.side === 'right' || !piece.test(panel.name)
        ? []
        : panel.piece.edges
            .filter(({ name }) => edges.test(name) && !sewnEdges.has(`${i}/${name}`))
            .map(({ name }) => alongChain(sewn, [{ panel: i, edge: name, reversed: false }])),
    );
    return stretches(chains, x, beneath, (p) => stretchAt(x[3 * p] as number, stand.bustPoint[0]));
  });
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

function stretches(
  chains: readonly (readonly number[])[],
  x: Float64Array,
  beneath: Beneath,
  stretchOf: (p: number) => GapEdge,
): readonly Gap[] {
  const found = new Map<GapEdge, { gaps: Map<number, number>; longer: number }>();
  for (const chain of chains)
    for (const [i, p] of chain.entries()) {
      // Of a piece cut whole, half is the wearer's right.
      if ((x[3 * p] as number) < -1) continue;
      const edge = stretchOf(p);
      const { gap, place } = beneath(p);
      const known = found.get(edge) ?? { gaps: new Map<number, number>(), longer: 0 };
      found.set(edge, known);
      known.gaps.set(p, gap);
      const before = chain[i - 1];
      if (before === undefined || stretchOf(before) !== edge) continue;
      const [a, b, c] = beneath(before).place;
      const step = Math.hypot(
        ...[0, 1, 2].map((k) => (x[3 * p + k] as number) - (x[3 * before + k] as number)),
      );
      known.longer += step - Math.hypot(place[0] - a, place[1] - b, place[2] - c);
    }
  return [...found].map(([edge, { gaps, longer }]) => {
    const all = [...gaps.values()];
    return {
      edge,
      most: Math.max(...all),
      mean: all.reduce((sum, gap) => sum + gap, 0) / all.length,
      longer,
    };
  });
}
