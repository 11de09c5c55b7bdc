import type { WovenCloth } from '../cloth/cloth.ts';
import { type ClothSheet, writeFlat } from '../cloth/sheet.ts';
import { pointAlong } from '../geometry/edge.ts';
import { meshRegion } from '../mesh/mesh-region.ts';
import { mirroredMesh } from '../mesh/mirrored-mesh.ts';
import type { TriangleMesh } from '../mesh/triangle-mesh.ts';
import type { Garment } from '../pattern/garment.ts';
import { type Panel, panelsOf } from './panel.ts';
import { spacingOf } from './spacing.ts';
import { chainPoints, type Stations, stationsAlong, stationsOf } from './stations.ts';
import { type PanelEdge, type WornSeam, wornSeams } from './worn-seam.ts';

/** A panel's own mesh, and which point of the sewn sheet each of its points is. */
export interface SewnPanel {
  readonly panel: Panel;
  /** Flat, as the left half is drawn. */
  readonly mesh: TriangleMesh;
  readonly points: Int32Array;
  /** Where among the mesh's points each edge begins. */
  readonly edgeStarts: ReadonlyMap<string, number>;
  /** Its triangles among the sheet's: the first, and how many. */
  readonly triangles: readonly [first: number, count: number];
}

/** A garment's outside, meshed and sewn up, not yet anywhere. */
export interface Sewn {
  readonly sheet: ClothSheet;
  readonly panels: readonly SewnPanel[];
  readonly seams: readonly WornSeam[];
  readonly stations: Stations;
  /** For each point of the sheet the point that is its mirror image; itself in the middle. None where left and right differ. */
  readonly mirror: Int32Array | undefined;
}

/** Meshes a garment's outside at `spacing` (mm) and sews it: where seams meet, panels share points. */
export function sewn(garment: Garment, cloth: WovenCloth, spacing: number): Sewn {
  const panels = panelsOf(garment);
  const seams = wornSeams(garment, panels);
  const spacings = panels.map((panel) => spacingOf(garment, panel, spacing));
  const stations = stationsOf(panels, seams, spacings);
  const meshes = new Map<string, Meshed>();
  const meshed = panels.map((panel, i): Meshed => {
    const known = meshes.get(panel.name);
    if (known) return known;
    const made = meshedPanel(panel, stations, spacings[i] ?? spacing);
    meshes.set(panel.name, made);
    return made;
  });
  const offsets = [0];
  for (const { mesh } of meshed) offsets.push((offsets.at(-1) as number) + mesh.points.length / 2);
  const same = new Groups(offsets.at(-1) as number);
  const pointOf = ({ panel, edge, station }: { panel: number; edge: string; station: number }): number => {
    const { mesh, edgeStarts } = meshed[panel] as Meshed;
    const start = edgeStarts.get(edge) as number;
    return (offsets[panel] as number) + ((start + station) % mesh.borderCount);
  };
  for (const { name, a, b } of seams) {
    const [onA, onB] = [a, b].map((chain) => chainPoints(chain, panels, stations));
    if (!onA || !onB || onA.length !== onB.length)
      throw new RangeError(
        `Seam “${name}” has ${onA?.length} points on one side and ${onB?.length} on the other.`,
      );
    for (const [i, one] of onA.entries()) {
      const other = onB[i];
      if (other) same.join(pointOf(one), pointOf(other));
    }
  }
  const { numbers, count } = same.numbered();
  const sewnPanels: SewnPanel[] = [];
  const triangles: number[] = [];
  const flat: number[] = [];
  const layers: number[] = [];
  for (const [i, panel] of panels.entries()) {
    const { mesh, edgeStarts } = meshed[i] as Meshed;
    const points = numbers.slice(offsets[i], offsets[i + 1]);
    sewnPanels.push({
      panel,
      mesh,
      points,
      edgeStarts,
      triangles: [triangles.length / 3, mesh.triangles.length / 3],
    });
    const { from, to } = panel.piece.grain;
    const corners = new Float64Array(2 * mesh.triangles.length);
    writeFlat(mesh.points, mesh.triangles, Math.atan2(to.y - from.y, to.x - from.x), corners, 0);
    for (const p of mesh.triangles) triangles.push(points[p] as number);
    for (const at of corners) flat.push(at);
    for (let t = 0; t < mesh.triangles.length / 3; t++) layers.push(panel.layers);
  }
  const sheet: ClothSheet = {
    count,
    triangles: Int32Array.from(triangles),
    flat: Float64Array.from(flat),
    layers: Float64Array.from(layers),
    cloth,
  };
  return { sheet, panels: sewnPanels, seams, stations, mirror: mirrorOf(sewnPanels, meshed, count) };
}

/** The sheet's points along one side of a seam, or along an edge of a panel as drawn. */
export const alongChain = ({ panels, stations }: Sewn, chain: readonly PanelEdge[]): readonly number[] =>
  chainPoints(
    chain,
    panels.map(({ panel }) => panel),
    stations,
  ).map(({ panel, edge, station }) => {
    const { mesh, points, edgeStarts } = panels[panel] as SewnPanel;
    return points[((edgeStarts.get(edge) as number) + station) % mesh.borderCount] as number;
  });

/** The points of a sewn sheet that one edge of a panel runs through. */
export const edgeChain = (sewn: Sewn, panel: number, edge: string): readonly number[] =>
  alongChain(sewn, [{ panel, edge, reversed: false }]);

interface Meshed {
  readonly mesh: TriangleMesh;
  readonly edgeStarts: ReadonlyMap<string, number>;
  /** Of what lies across the middle: see `MirroredMesh`. */
  readonly mirror?: Int32Array;
}

function meshedPanel(panel: Panel, stations: Stations, spacing: number): Meshed {
  const border: number[] = [];
  const edgeStarts = new Map<string, number>();
  for (const edge of panel.piece.edges) {
    edgeStarts.set(edge.name, border.length / 2);
    for (const at of stationsAlong(stations, panel, edge.name).slice(0, -1)) {
      const { x, y } = pointAlong(edge, at).point;
      border.push(x, y);
    }
  }
  const flat = Float64Array.from(border);
  const mirrored = panel.side === 'whole' ? mirroredMesh(flat, spacing) : undefined;
  if (!mirrored) return { mesh: meshRegion(flat, spacing), edgeStarts };
  const { mirror, ...mesh } = mirrored;
  return { mesh, edgeStarts, mirror };
}

/** Left panels and right ones have the same mesh, so their points answer each other; what lies across the middle answers itself. */
function mirrorOf(
  panels: readonly SewnPanel[],
  meshed: readonly Meshed[],
  count: number,
): Int32Array | undefined {
  const mirror = new Int32Array(count).fill(-1);
  for (const [k, { panel, points }] of panels.entries()) {
    const other = panels.find((each) => each.panel.name === panel.name && each.panel.side === 'right');
    const own = meshed[k]?.mirror;
    const images = own ? points.map((_, i) => points[own[i] as number] as number) : other?.points;
    if (panel.side === 'right') continue;
    if (!images) return undefined;
    for (const [i, p] of points.entries()) {
      const q = images[i] as number;
      // Sewn to one thing on the left and to another on the right.
      if ((mirror[p] !== -1 && mirror[p] !== q) || (mirror[q] !== -1 && mirror[q] !== p)) return undefined;
      mirror[p] = q;
      mirror[q] = p;
    }
  }
  return mirror;
}

/** Points that are one once sewn. */
class Groups {
  readonly #leader: Int32Array;

  constructor(count: number) {
    this.#leader = Int32Array.from({ length: count }, (_, i) => i);
  }

  #find(point: number): number {
    let at = point;
    while (this.#leader[at] !== at) at = this.#leader[at] as number;
    this.#leader[point] = at;
    return at;
  }

  join(a: number, b: number): void {
    const [one, other] = [this.#find(a), this.#find(b)];
    this.#leader[Math.max(one, other)] = Math.min(one, other);
  }

  /** Consecutive numbers, one for each group, in the order of their first points. */
  numbered(): { readonly numbers: Int32Array; readonly count: number } {
    const numbers = new Int32Array(this.#leader.length).fill(-1);
    let count = 0;
    for (let i = 0; i < numbers.length; i++) {
      const leader = this.#find(i);
      if (leader === i) numbers[i] = count++;
      else numbers[i] = numbers[leader] as number;
    }
    return { numbers, count };
  }
}
