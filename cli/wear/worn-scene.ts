import { placeAt } from '../../engine/geometry/space.ts';
import { millimetres, type Unit } from '../../engine/text/units.ts';
import { alongChain } from '../../engine/wear/sewn.ts';
import { grainLines, panelTitle } from '../../engine/wear/shown/grain-lines.ts';
import type { WornMap } from '../../engine/wear/shown/maps.ts';
import { pieceTints } from '../../engine/wear/shown/piece-tints.ts';
import type { ShownWorn } from '../../engine/wear/shown/shown-worn.ts';
import type { SceneLine, SceneMap, WornScene } from '../page/worn/scene.ts';

/** Seams and grain lie so far over the cloth, mm, that it does not hide them. */
const OVER = 1;

/** A worn garment as what the page of it shows. */
export function wornScene(
  { worn, cloth, body, levels }: ShownWorn,
  maps: readonly WornMap[],
  { title, says }: Pick<WornScene, 'title' | 'says'>,
  unit: Unit,
): WornScene {
  const { panels, seams } = worn.sewn;
  const tints = pieceTints(panels.map(({ panel }) => panel.name));
  const lifted = (p: number): readonly number[] =>
    placeAt(cloth.points, p).map((at, k) => at + OVER * (cloth.normals[3 * p + k] as number));
  return {
    title,
    says,
    points: Float32Array.from(cloth.points),
    pieces: panels.map((panel) => ({
      name: panelTitle(panel),
      colour: tints.get(panel.panel.name) ?? '#ffffff',
      triangles: cloth.triangles.slice(3 * panel.triangles[0], 3 * (panel.triangles[0] + panel.triangles[1])),
      first: panel.triangles[0],
    })),
    body: body.parts.map(({ name, firstPoint, points, firstTriangle, triangles }) => ({
      name,
      points: Float32Array.from(body.points.subarray(3 * firstPoint, 3 * (firstPoint + points))),
      triangles: body.triangles
        .slice(3 * firstTriangle, 3 * (firstTriangle + triangles))
        .map((corner) => corner - firstPoint),
    })),
    lines: [
      ...seams.map(
        ({ name, a }): SceneLine => ({
          name,
          kind: 'seam',
          points: Float32Array.from(alongChain(worn.sewn, a).flatMap(lifted)),
        }),
      ),
      ...grainLines(worn).map(
        ({ piece, points }): SceneLine => ({
          name: `grain of the ${piece}`,
          kind: 'grain',
          points: Float32Array.from(points.flat()),
        }),
      ),
    ],
    levels,
    maps: maps.map(sceneMap),
    reader: { perMm: 1 / millimetres[unit], unit, digits: { mm: 0, cm: 1, in: 2 }[unit] },
  };
}

const sceneMap = ({ name, title, unit, digits, values, colours, steps }: WornMap): SceneMap => {
  const numbers = new Map(steps.map(({ colour }, i) => [colour, i]));
  return {
    name,
    title,
    unit,
    digits,
    values: Float32Array.from(values),
    stepOf: Uint32Array.from(colours, (colour) => numbers.get(colour) ?? 0),
    steps,
  };
};
