import type { LevelCrossing } from './girth-map.ts';
import type { SewnPanel } from './sewn.ts';
import { type HalfSection, placeOn, type Stand } from './stand.ts';

/** A gore is laid no nearer to the body than in a girth larger than hers by this share. */
const LOOSE = 1.03;

/** Between the heights at which a gore's breadth is looked up, mm. */
const BAND = 20;

/** A gore covers the share of the girth it was drafted to cover at the hip, and lies on a cone as wide as all gores are there. */
export interface GoreLaid {
  readonly share: (x: number, y: number) => number;
  /** Half the girth of the skirt over half that of the body, at a height as drawn. */
  readonly wider: (y: number, half: number) => number;
}

/** How gores are laid whose hip levels are at one height as drawn. */
export function goresLaid(
  panels: readonly { readonly panel: SewnPanel; readonly hip: LevelCrossing }[],
): (panel: SewnPanel) => GoreLaid | undefined {
  const breadths = new Map(panels.map(({ panel }) => [panel.panel.name, breadthsOf(panel)] as const));
  const all = [...breadths.values()];
  const halfAt = (y: number): number =>
    all.reduce((sum, breadth) => {
      const [left, right] = breadth(y);
      return sum + right - left;
    }, 0);
  return (panel) => {
    const found = panels.find((each) => each.panel.panel.name === panel.panel.name);
    const breadth = breadths.get(panel.panel.name);
    if (!found || !breadth) return undefined;
    const { atLeft, atRight } = found.hip;
    return {
      share: (x, y) => {
        const [left, right] = breadth(y);
        return atLeft + ((x - left) / Math.max(1, right - left)) * (atRight - atLeft);
      },
      wider: (y, half) => Math.max(LOOSE, halfAt(y) / half),
    };
  };
}

/** Between which x a panel lies at a height as drawn. */
function breadthsOf({ mesh }: SewnPanel): (y: number) => readonly [left: number, right: number] {
  const bands = new Map<number, [number, number]>();
  const bandOf = (y: number): number => Math.round(y / BAND);
  const put = (band: number, x: number): void => {
    const known = bands.get(band);
    if (!known) bands.set(band, [x, x]);
    else bands.set(band, [Math.min(known[0], x), Math.max(known[1], x)]);
  };
  for (let i = 0; i < mesh.borderCount; i++) {
    const j = (i + 1) % mesh.borderCount;
    const [x, y, toX, toY] = [
      mesh.points[2 * i] as number,
      mesh.points[2 * i + 1] as number,
      mesh.points[2 * j] as number,
      mesh.points[2 * j + 1] as number,
    ];
    for (let t = 0; t <= 1; t += 0.25) put(bandOf(y + t * (toY - y)), x + t * (toX - x));
  }
  const [top, bottom] = [Math.min(...bands.keys()), Math.max(...bands.keys())];
  return (y) => bands.get(Math.max(top, Math.min(bottom, bandOf(y)))) ?? [0, 1];
}

/** Where a place on a gore is laid: on the section at its height, pushed out to the girth of the cloth there. */
export function onCone(
  laid: GoreLaid,
  x: number,
  y: number,
  section: HalfSection,
): readonly [x: number, z: number] {
  const [sx, sz] = placeOn(section, Math.max(0, Math.min(1, laid.share(x, y))));
  const by = laid.wider(y, section.along.at(-1) as number);
  const middle = ((section.points[1] as number) + (section.points.at(-1) as number)) / 2;
  return [by * sx, middle + by * (sz - middle)];
}

/** The height above the floor of a place on a gore. */
export const goreHeight = (stand: Stand, hip: LevelCrossing, y: number): number =>
  stand.levels.hip + hip.y - y;
