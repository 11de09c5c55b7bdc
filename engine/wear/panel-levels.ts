import { edgeEnd, edgeStart } from '../geometry/edge.ts';
import { distance } from '../geometry/point.ts';
import type { Garment } from '../pattern/garment.ts';
import { crossingsOf, type LevelCrossing } from './girth-map.ts';
import { edgeOfPanel, type Panel, panelsOf } from './panel.ts';
import { sleevesOf } from './what-meets.ts';
import { type PanelEdge, type WornSeam, wornSeams } from './worn-seam.ts';

/** Where each panel of a garment crosses the levels of the body: its own crossings, or those of the panel that it goes on from. */
export const panelLevels = (
  garment: Garment,
  panels: readonly Panel[],
  seams: readonly WornSeam[],
): ReadonlyMap<string, readonly LevelCrossing[]> => borrowed(crossingsOf(garment), panels, seams);

/** The pieces of a garment's outside that this does not know how to lay round a body. */
export function notWorn(garment: Garment): readonly string[] {
  const panels = panelsOf(garment);
  const known = panelLevels(garment, panels, wornSeams(garment, panels));
  const hangs = [...known.values()].some(([first]) => first?.level === 'bust' || first?.level === 'waist');
  const sleeves = sleevesOf(garment);
  const unplaced = panels.filter(({ name }) => !hangs || (!known.has(name) && !sleeves.has(name)));
  return [...new Set(unplaced.map(({ name }) => name))];
}

/** A panel that crosses no level goes on from one it is sewn to, where both are drawn in one place. */
function borrowed(
  known: ReadonlyMap<string, readonly LevelCrossing[]>,
  panels: readonly Panel[],
  seams: readonly WornSeam[],
): ReadonlyMap<string, readonly LevelCrossing[]> {
  const all = new Map(known);
  for (let found = true; found; ) {
    found = false;
    for (const { a, b } of seams)
      for (const [one, other] of [
        [a[0], b[0]],
        [b[0], a[0]],
      ]) {
        const to = one && panels[one.panel]?.name;
        const from = other && panels[other.panel]?.name;
        const own = from === undefined ? undefined : all.get(from);
        if (to === undefined || !own || all.has(to) || !drawnTogether(panels, one, other)) continue;
        all.set(to, own);
        found = true;
      }
  }
  return all;
}

/** Two edges are drawn in one place when an end of one is nearer than this to that of the other, mm, ... */
const TOGETHER = 30;

/** ... and its other end no farther than this share of its length: a strap may be turned, in front of a very full bust by 33 degrees. */
const TURNED = 0.8;

/** Whether both edges are drawn where the other is, as those of a strap and the panel it goes on from. */
function drawnTogether(
  panels: readonly Panel[],
  one: PanelEdge | undefined,
  other: PanelEdge | undefined,
): boolean {
  const [ends, others] = [one, other].map((ref) => {
    const panel = ref && panels[ref.panel];
    const edge = panel && edgeOfPanel(panel, ref.edge);
    const both = edge ? [edgeStart(edge), edgeEnd(edge)] : [];
    return ref?.reversed ? both.toReversed() : both;
  });
  const [from, to] = ends ?? [];
  const [otherFrom, otherTo] = others ?? [];
  if (!from || !to || !otherFrom || !otherTo) return false;
  const apart = [distance(from, otherFrom), distance(to, otherTo)];
  const turned = Math.max(TOGETHER, TURNED * distance(from, to));
  return Math.min(...apart) < TOGETHER && Math.max(...apart) < turned;
}
