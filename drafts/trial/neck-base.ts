import { point } from '../../engine/geometry/point.ts';
import type { Style } from '../bodice/style.ts';
import { type StyleLines, styleLines } from '../bodice/style-lines.ts';
import type { Foundation } from '../foundation/foundation.ts';
import { alongShoulder } from '../foundation/neck-and-shoulder.ts';
import type { FoundationTable } from '../foundation/table.ts';
import { trialRules as rules } from './rules.ts';

/** The block itself in princess panels from the middle of the shoulder, closed up to the neck base. */
const style: Style = {
  shoulder: 'whole',
  front: 'plain',
  princess: { front: 'shoulder', back: 'shoulder' },
  neckline: 'natural',
  backNeckline: 'natural',
};

/** Draws the neck base, and the princess lines to the shoulder. */
export function drawNeckBase(table: FoundationTable, foundation: Foundation): StyleLines {
  table.heading('Neck base');
  const { front, back } = foundation;
  const middle = table.mm`Princess line at the shoulder, from the side neck: shoulder length ${table.size.shoulderLength} / 2`;
  for (const [on, { shoulder }] of [
    ['front', front],
    ['back', back],
  ] as const)
    table.dimension(on, middle, shoulder.sideNeck, alongShoulder(shoulder, middle.value));
  const width = table.measured(
    'Front neck, centre to side',
    'on the drawing',
    front.shoulder.sideNeck.x,
    front.shoulder.sideNeck,
  );
  const depth = table.mm`Front neck below the side neck: ${width} + ${rules.frontNeckDepth}`;
  const centre = table.point('front', 'front neck point', point(0, front.shoulder.sideNeck.y + depth.value));
  table.dimension('front', depth, point(0, front.shoulder.sideNeck.y), centre);
  return styleLines(
    table,
    foundation,
    style,
    { inner: 0, princess: middle.value, outer: table.size.shoulderLength.value },
    {
      front: { corner: front.shoulder.sideNeck, centre },
      back: { corner: back.shoulder.sideNeck, centre: point(0, 0) },
    },
  );
}
