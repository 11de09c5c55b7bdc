import type { SketchBuilder } from '../../engine/constraints/sketch-builder.ts';
import { runsAcross } from '../../engine/constraints/statements.ts';
import type { Curve } from '../../engine/geometry/curve.ts';
import { moved, type Point } from '../../engine/geometry/point.ts';
import { heading, scaled } from '../../engine/geometry/vector.ts';
import { straight } from '../piece-edges.ts';
import type { HalfStyle, StyleLines } from './style-lines.ts';

/** How far along the shoulder its heading is drawn in the sketch, mm; any length would do. */
const SOME_WAY = 50;

/**
 * Asks that a whole shoulder run on without a corner over the princess seam that begins there. Where it was found lower
 * or further forward on one side only, it is the shoulder of both sides that runs on: the panel at the centre is cut alike
 * for both.
 */
export function runsOverShoulder(
  sketch: SketchBuilder,
  part: 'front' | 'back',
  { atCentre, neckHeading, princess }: HalfStyle,
  begins: { readonly centre: string; readonly side: string },
): void {
  const { centre, side } = princess;
  const outwards = moved(side, scaled(heading(neckHeading - Math.PI / 2), SOME_WAY));
  const line = (panel: 'centre' | 'side', from: Point, to: Point): string =>
    sketch.line(
      `${panel} ${part} shoulder`,
      sketch.fixed(`${panel} ${part} shoulder begins`, from),
      sketch.fixed(`${panel} ${part} shoulder goes on`, to),
    );
  const centreShoulder = line('centre', atCentre.inner, centre);
  const sideShoulder = line('side', side, outwards);
  sketch.relation(
    runsAcross(
      `${part} shoulder across the princess seam`,
      [begins.side, sideShoulder],
      [centreShoulder, begins.centre],
    ),
  );
}

/** Whether the shoulder turns at the princess seam, since it was fitted on one side only. */
export const turnsOnOneSide = ({ neckHeading, square }: HalfStyle): boolean => neckHeading !== square;

/**
 * The shoulder of the side front, as the closed dart has turned it: from neckline or princess line to the armhole. None where
 * the panel ends at a strap, or does not reach so far.
 */
export function sideFrontShoulder({ style, front }: StyleLines): readonly Curve[] {
  if (style.shoulder === 'strap' || style.princess.front === 'armhole') return [];
  return straight(style.princess.front === 'neckline' ? front.inner : front.princess.side, front.outer);
}
