import type { Side } from '../body/side.ts';
import { edgeLength, pointAlong } from '../geometry/edge.ts';
import type { Garment } from '../pattern/garment.ts';
import type { EdgeRef, Seam } from '../pattern/seam.ts';
import { edgeOfPanel, leftAndRight, middleEdges, type Panel } from './panel.ts';

/** An edge of a panel in a seam, walked from its start as drawn or from its end. */
export interface PanelEdge {
  readonly panel: number;
  readonly edge: string;
  readonly reversed: boolean;
}

/** Two chains of panels' edges that are sewn together, both walked from the same end. */
export interface WornSeam {
  readonly name: string;
  readonly a: readonly PanelEdge[];
  readonly b: readonly PanelEdge[];
}

/**
 * The seams of a garment between its panels, on whichever sides they are sewn; with them the middles, where a left panel
 * meets its mirror image: on a fold, or closed by the zip. What is sewn to a lining or a facing is left out.
 */
export function wornSeams(garment: Garment, panels: readonly Panel[]): readonly WornSeam[] {
  const names = new Set(panels.map(({ name }) => name));
  const seams = garment.seams
    .filter(({ a, b }) => [...a, ...b].every(({ piece }) => names.has(piece)) && !sameChain(a, b))
    .flatMap((seam) => onItsSides(seam, panels));
  const middles = [...middleEdges(garment)].flatMap((key): readonly WornSeam[] => {
    const [piece = '', edge = ''] = key.split('/');
    const pair = panels.find(({ name }) => name === piece)?.pair;
    const [left, right] = leftAndRight.map((side) =>
      panels.findIndex((panel) => panel.pair === pair && panel.side === side),
    );
    if (left === undefined || right === undefined || left < 0 || right < 0) return [];
    // Where left and right are pieces of their own, each of them says so.
    if (panels[left]?.name !== piece) return [];
    const walked = { edge, reversed: false };
    return [{ name: `${piece}, ${edge}`, a: [{ panel: left, ...walked }], b: [{ panel: right, ...walked }] }];
  });
  return [...seams, ...middles];
}

/** A piece sewn to its own lining, cut from the same pattern. */
const sameChain = (a: readonly EdgeRef[], b: readonly EdgeRef[]): boolean =>
  a.length === b.length && a.every(({ piece, edge }, i) => piece === b[i]?.piece && edge === b[i]?.edge);

function panelAt(panels: readonly Panel[], piece: string, side: Side): number | undefined {
  const found = panels.findIndex(
    (panel) => panel.name === piece && (panel.side === side || panel.side === 'whole'),
  );
  return found < 0 ? undefined : found;
}

function onItsSides(seam: Seam, panels: readonly Panel[]): readonly WornSeam[] {
  const isWhole = ({ piece }: EdgeRef): boolean =>
    panels.some(({ name, side }) => name === piece && side === 'whole');
  const anyWhole = [...seam.a, ...seam.b].some(isWhole);
  if (anyWhole && seam.side === undefined) return [acrossTheMiddle(seam, panels)];
  return sidesOf(seam, panels).map((side) => ({
    name: `${seam.name}, ${side}`,
    a: seam.a.map((ref) => panelEdge(ref, panels, side)),
    b: seam.b.map((ref) => panelEdge(ref, panels, side)),
  }));
}

/** The sides on which a seam is sewn: that of a piece of one side, or the seam's own, or both. */
function sidesOf({ a, b, side }: Seam, panels: readonly Panel[]): readonly Side[] {
  const own = [...a, ...b].flatMap(
    ({ piece }) => panels.find(({ name }) => name === piece)?.piece.oneOf?.side ?? [],
  );
  return own.length > 0 ? own.slice(0, 1) : side === undefined ? leftAndRight : [side];
}

function panelEdge({ piece, edge, reversed }: EdgeRef, panels: readonly Panel[], side: Side): PanelEdge {
  const panel = panelAt(panels, piece, side);
  if (panel === undefined) throw new RangeError(`“${piece}” is not worn.`);
  // What is worn here as its pair is drawn is walked the other way where it was drawn as the mirror image.
  const turned = panels[panel]?.piece.oneOf?.mirrored ?? false;
  return { panel, edge, reversed: turned !== (reversed ?? false) };
}

/** A seam of a piece that lies across the middle: what it is sewn to is on the side where that stretch of it lies. */
function acrossTheMiddle(seam: Seam, panels: readonly Panel[]): WornSeam {
  const [whole, halves] = [seam.a, seam.b].map((chain) => chain.map((ref) => panelEdge(ref, panels, 'left')));
  const isWhole = (chain: readonly PanelEdge[]): boolean =>
    chain.every(({ panel }) => panels[panel]?.side === 'whole');
  if (!whole || !halves) throw new RangeError('A seam has two sides.');
  const [across, along] = isWhole(whole) ? [whole, halves] : [halves, whole];
  const lengths = along.map((ref) => lengthOf(ref, panels));
  const total = lengths.reduce((sum, length) => sum + length, 0);
  let walked = 0;
  const sided = along.map((ref, i): PanelEdge => {
    const middle = (walked + (lengths[i] ?? 0) / 2) / total;
    walked += lengths[i] ?? 0;
    const side = xAt(across, middle, panels) > 0 ? 'left' : 'right';
    const name = panels[ref.panel]?.name ?? '';
    return { ...ref, panel: panelAt(panels, name, side) ?? ref.panel };
  });
  return { name: seam.name, a: across, b: sided };
}

export const lengthOf = ({ panel, edge }: PanelEdge, panels: readonly Panel[]): number =>
  edgeLength(edgeOfPanel(panels[panel] as Panel, edge));

/** How far to the wearer's left a share of a chain lies, its pieces drawn about their own middle. */
function xAt(chain: readonly PanelEdge[], share: number, panels: readonly Panel[]): number {
  const total = chain.reduce((sum, ref) => sum + lengthOf(ref, panels), 0);
  let left = share * total;
  for (const ref of chain) {
    const length = lengthOf(ref, panels);
    if (left <= length) {
      const along = ref.reversed ? length - left : left;
      return pointAlong(edgeOfPanel(panels[ref.panel] as Panel, ref.edge), along).point.x;
    }
    left -= length;
  }
  return 0;
}
