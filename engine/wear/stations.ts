import type { Edge } from '../geometry/curve.ts';
import { edgeEnd, edgeLength, edgeStart } from '../geometry/edge.ts';
import { RELATION } from '../geometry/tolerance.ts';
import type { Panel } from './panel.ts';
import { lengthOf, type PanelEdge, type WornSeam } from './worn-seam.ts';

/** Stops nearer to each other than this share of the spacing are one: a side of a triangle can be no shorter. */
const ONE_STOP = 0.45;

/** Where the points of a mesh stand on the edges of a piece, mm from the start as drawn; both halves of a pair have the same. */
export type Stations = ReadonlyMap<string, readonly number[]>;

const keyOf = (panel: Panel, edge: string): string => `${panel.name}/${edge}`;

/**
 * Divides every edge so that seams can be sewn point to point: between the ends of edges and the notches that both sides of a
 * seam have, as many steps on one side as on the other, as long on the average of both as the finer of them asks (mm, one a panel). What has no partner
 * is divided evenly.
 */
export function stationsOf(
  panels: readonly Panel[],
  seams: readonly WornSeam[],
  spacings: readonly number[],
): Stations {
  const stations = new Map<string, readonly number[]>();
  for (const { a, b } of seams) {
    const spacing = Math.min(...[...a, ...b].map(({ panel }) => spacings[panel] ?? Infinity));
    const stops = sharedStops(a, b, panels, spacing);
    const [onA, onB] = divided(stops, spacing);
    put(stations, a, onA, panels);
    put(stations, b, onB, panels);
  }
  for (const [i, panel] of panels.entries())
    for (const edge of panel.piece.edges) {
      const key = keyOf(panel, edge.name);
      if (stations.has(key)) continue;
      const length = edgeLength(edge);
      const steps = Math.max(1, Math.round(length / (spacings[i] ?? length)));
      // What goes across the middle of the body has a point there.
      const count = panel.side === 'whole' && isAcross(edge) ? 2 * Math.ceil(steps / 2) : steps;
      stations.set(
        key,
        Array.from({ length: count + 1 }, (_, i) => (length * i) / count),
      );
    }
  return stations;
}

const isAcross = (edge: Edge): boolean => edgeStart(edge).x * edgeEnd(edge).x < 0;

export const stationsAlong = (stations: Stations, panel: Panel, edge: string): readonly number[] =>
  stations.get(keyOf(panel, edge)) ?? [];

type Stop = readonly [onA: number, onB: number];

/** Where both chains must have a point: their ends, notches of one name, and wherever either passes from edge to edge. */
function sharedStops(
  a: readonly PanelEdge[],
  b: readonly PanelEdge[],
  panels: readonly Panel[],
  spacing: number,
): readonly Stop[] {
  const [marksA, marksB] = [a, b].map((chain) => marksOn(chain, panels));
  if (!marksA || !marksB) return [];
  const stops: Stop[] = [
    [0, 0],
    [marksA.length, marksB.length],
  ];
  const clear = ([onA, onB]: Stop): boolean =>
    stops.every(
      ([otherA, otherB]) =>
        (onA - otherA) * (onB - otherB) > 0 &&
        Math.abs(onA - otherA) > ONE_STOP * spacing &&
        Math.abs(onB - otherB) > ONE_STOP * spacing,
    );
  const joints = (
    own: readonly number[],
    other: readonly number[],
    across: (at: number) => number,
    swap: boolean,
  ) => {
    for (const at of own) {
      const there = across(at);
      const partner = other.find((joint) => Math.abs(joint - there) < ONE_STOP * spacing) ?? there;
      const stop: Stop = swap ? [partner, at] : [at, partner];
      if (!stops.some(([x, y]) => x === stop[0] && y === stop[1])) stops.push(stop);
    }
  };
  // Joints first: where edges meet there is a point whatever else there is.
  const linear = (from: number, to: number) => (at: number) => (at * to) / from;
  joints(marksA.joints, marksB.joints, linear(marksA.length, marksB.length), false);
  joints(marksB.joints, marksA.joints, linear(marksB.length, marksA.length), true);
  for (const [name, onA] of marksA.notches) {
    const onB = marksB.notches.get(name);
    if (onB !== undefined && clear([onA, onB])) stops.push([onA, onB]);
  }
  return stops.sort((one, other) => one[0] - other[0]);
}

function marksOn(chain: readonly PanelEdge[], panels: readonly Panel[]) {
  const notches = new Map<string, number>();
  const joints: number[] = [];
  let length = 0;
  for (const [i, ref] of chain.entries()) {
    const panel = panels[ref.panel] as Panel;
    const own = lengthOf(ref, panels);
    for (const { name, edge, at } of panel.piece.notches)
      if (edge === ref.edge) notches.set(name, length + (ref.reversed ? own - at : at));
    length += own;
    if (i + 1 < chain.length) joints.push(length);
  }
  return { notches, joints, length };
}

function divided(stops: readonly Stop[], spacing: number): readonly [readonly number[], readonly number[]] {
  const onA: number[] = [0];
  const onB: number[] = [0];
  for (const [i, [toA, toB]] of stops.entries()) {
    const before = stops[i - 1];
    if (!before) continue;
    const [fromA, fromB] = before;
    const count = Math.max(1, Math.round((toA - fromA + toB - fromB) / 2 / spacing));
    for (let k = 1; k <= count; k++) {
      onA.push(fromA + ((toA - fromA) * k) / count);
      onB.push(fromB + ((toB - fromB) * k) / count);
    }
  }
  return [onA, onB];
}

/** Puts down the points of a chain on its edges. The second half of a pair finds its edges divided. */
function put(
  stations: Map<string, readonly number[]>,
  chain: readonly PanelEdge[],
  places: readonly number[],
  panels: readonly Panel[],
): void {
  let from = 0;
  for (const ref of chain) {
    const panel = panels[ref.panel] as Panel;
    const length = lengthOf(ref, panels);
    const own = places
      .filter((place) => place > from - RELATION && place < from + length + RELATION)
      .map((place) => Math.max(0, Math.min(length, ref.reversed ? from + length - place : place - from)));
    const key = keyOf(panel, ref.edge);
    if (!stations.has(key)) stations.set(key, ref.reversed ? own.toReversed() : own);
    from += length;
  }
}

/** The places of a chain's points, one after the other: which panel, which edge, which of its stations. */
export function chainPoints(
  chain: readonly PanelEdge[],
  panels: readonly Panel[],
  stations: Stations,
): readonly { readonly panel: number; readonly edge: string; readonly station: number }[] {
  return chain.flatMap(({ panel, edge, reversed }, i) => {
    const count = stationsAlong(stations, panels[panel] as Panel, edge).length;
    const walked = Array.from({ length: count }, (_, k) => ({
      panel,
      edge,
      station: reversed ? count - 1 - k : k,
    }));
    return i === 0 ? walked : walked.slice(1);
  });
}
