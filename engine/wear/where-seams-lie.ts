import type { Garment } from '../pattern/garment.ts';
import { crossingsOf } from './girth-map.ts';
import { alongChain, edgeChain, type SewnPanel } from './sewn.ts';
import { type Stand, sectionAt } from './stand.ts';
import { stationsAlong } from './stations.ts';
import type { Worn } from './worn.ts';
import type { PanelEdge } from './worn-seam.ts';

/** How far the waist seam lies above the body's waist at a place, mm. */
export interface WaistAt {
  readonly at: string;
  readonly above: number;
}

/** A garment's bust point from the body's, mm: to the side, and up. */
export interface BustPointOff {
  readonly across: number;
  readonly up: number;
}

/** The side seam at the waist, mm forward of the body's side; and how far it leans forward from below up, degrees. */
export interface SideAsWorn {
  readonly atWaist: number;
  readonly lean: number;
}

/** Height of a hem above the floor, mm. */
export interface HemHeight {
  readonly lowest: number;
  readonly highest: number;
  readonly mean: number;
}

/** Height of the waist seam above the body's waist, place by place. */
export function waistLevels({ joins }: Garment, { x, sewn }: Worn, stand: Stand): readonly WaistAt[] {
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

/** The bust point is marked at bust level on the seam that runs nearest to it: the one between two pieces of the front. None where no edge carries the mark. */
export function bustPointOf(garment: Garment, { x, sewn }: Worn, stand: Stand): BustPointOff | undefined {
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

/** Where the side seam lies; none where there is none. */
export function sideOf({ x, sewn }: Worn, stand: Stand): SideAsWorn | undefined {
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

/** How high the hem hangs; none where it hangs from no waist. */
export function hemOf({ girths }: Garment, { x, sewn }: Worn): HemHeight | undefined {
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
