import { type Point, point } from '../../geometry/point.ts';
import { nameSize, type PictureWord } from '../booklet/picture.ts';
import type { Size } from '../layout.ts';
import { textWidth } from '../text-size.ts';

/** A name and the point of a picture that it belongs to, mm. */
interface Named {
  readonly name: string;
  readonly at: Point;
}

/** The room that a name takes: the middle of its baseline, and its width. */
interface Label {
  readonly at: Point;
  readonly width: number;
}

/** Distance of a name from its point, mm. */
const away = 1.6;

/** How much a name that leaves the picture counts against one that lies on another, per mm. */
const outsideCounts = 3;

/** The room that the cross of a point takes, mm. */
const crossWidth = 2;

/**
 * Sets names beside their points in a picture of this size, each where it least meets a name set before it or another
 * point, or leaves the picture: right, left, above or below. What would still leave it to the side is moved in.
 */
export function pointNames(
  points: readonly Named[],
  others: readonly Point[],
  { width, height }: Size,
): readonly PictureWord[] {
  const crosses = [...others, ...points.map(({ at }) => at)].map((at) => ({
    at: point(at.x, at.y + nameSize / 3),
    width: crossWidth,
  }));
  const set: Label[] = [...crosses];
  return points.map(({ name, at }) => {
    const room = textWidth(name, nameSize);
    const cost = (label: Label): number =>
      set.reduce((sum, other) => sum + shared(label, other), 0) +
      outsideCounts * outside(label, width, height);
    const best = choices(at, room).reduce((a, b) => (cost(b) < cost(a) ? b : a));
    const most = Math.max(room / 2, width - room / 2);
    const kept = { ...best, at: point(Math.min(Math.max(best.at.x, room / 2), most), best.at.y) };
    set.push(kept);
    return { kind: 'name', text: name, at: kept.at };
  });
}

/** Beside the point, a little above or below the line that may run through it; or right above or below it. */
function choices({ x, y }: Point, width: number): readonly [Label, ...Label[]] {
  const label = (across: number, down: number): Label => ({ at: point(x + across, y + down), width });
  const [side, high, low] = [away + width / 2, -away / 3, away / 3 + nameSize * 0.7];
  return [
    label(side, high),
    label(-side, high),
    label(side, low),
    label(-side, low),
    label(0, -away),
    label(0, away + nameSize),
  ];
}

/** How wide two names lie on each other, mm. */
function shared(a: Label, b: Label): number {
  if (Math.abs(a.at.y - b.at.y) >= nameSize) return 0;
  return Math.max(0, (a.width + b.width) / 2 - Math.abs(a.at.x - b.at.x));
}

/** How far a name reaches out of the picture, mm. */
function outside({ at, width: room }: Label, width: number, height: number): number {
  const sides = Math.max(0, room / 2 - at.x) + Math.max(0, at.x + room / 2 - width);
  return sides + Math.max(0, nameSize - at.y) + Math.max(0, at.y - height);
}
