import type { ScenePiece, SceneReading, WornScene } from './scene.ts';

/** What the maps say of one triangle of a piece, and where a place on it lies. */
export const figuresAt = (
  { maps, levels }: WornScene,
  piece: ScenePiece,
  triangle: number,
  { x, y }: { readonly x: number; readonly y: number },
): SceneReading => ({
  piece: piece.name,
  above: y - (levels.waist ?? 0),
  aside: x,
  figures: maps.map(({ title, unit, digits, values }) => ({
    title,
    value: values[piece.first + triangle] ?? 0,
    unit,
    digits,
  })),
});
