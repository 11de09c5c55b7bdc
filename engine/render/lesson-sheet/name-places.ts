import type { Stroke } from '../../finishing/chords.ts';
import type { Rectangle } from '../../finishing/rectangle.ts';
import { type Point, point } from '../../geometry/point.ts';
import { nameSize } from '../booklet/picture.ts';
import type { Anchored } from '../ink.ts';
import { textWidth } from '../text-size.ts';

/** A place for a name beside its point: on a baseline, with the room it takes, and a fine line to the point from further off. Mm. */
export interface PlacedName {
  readonly at: Point;
  readonly anchored: Anchored;
  readonly box: Rectangle;
  readonly leader?: Stroke;
}

/** Half the length of the arms of the cross that marks a point, mm. */
export const crossArm = 0.9;

/** Distance of a name from its point where no line leads to it, mm. */
const away = 1.6;

/** How far off a name may stand at the end of a line, mm. */
const further = [4, 7, 11, 16];

/** Where such a line may go. */
const directions = Array.from({ length: 12 }, (_, i) => {
  const angle = (i * Math.PI) / 6;
  return point(Math.cos(angle), Math.sin(angle));
});

/**
 * Places for a name, the best first where nothing is in the way: beside its point, a little above or below the line that may run
 * through it; right above or below it; or further off at the end of a line.
 */
export function placesBeside(name: string, { x, y }: Point): readonly PlacedName[] {
  const width = textWidth(name, nameSize);
  const place = (at: Point, anchored: Anchored, leader?: Stroke): PlacedName => {
    const middle = at.x + { start: width / 2, middle: 0, end: -width / 2 }[anchored];
    const box = { middle: point(middle, at.y - nameSize / 3), width, height: nameSize };
    return { at, anchored, box, ...(leader && { leader }) };
  };
  const [high, low] = [y - away / 3, y + away / 3 + nameSize * 0.7];
  const near = [
    place(point(x + away, high), 'start'),
    place(point(x - away, high), 'end'),
    place(point(x + away, low), 'start'),
    place(point(x - away, low), 'end'),
    place(point(x, y - away), 'middle'),
    place(point(x, y + away + nameSize), 'middle'),
  ];
  const led = further.flatMap((far) =>
    directions.map((to) => {
      const end = point(x + far * to.x, y + far * to.y);
      const leader = { from: point(x + crossArm * to.x, y + crossArm * to.y), to: end };
      if (Math.abs(to.x) > 0.4)
        return place(
          point(end.x + Math.sign(to.x) * gap, end.y + nameSize / 3),
          to.x > 0 ? 'start' : 'end',
          leader,
        );
      return place(point(end.x, to.y < 0 ? end.y - gap : end.y + gap + 0.7 * nameSize), 'middle', leader);
    }),
  );
  return [...near, ...led];
}

/** White between a name and the end of the line that leads to it, mm. */
const gap = 0.5;
