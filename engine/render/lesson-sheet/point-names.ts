import { chordsOf, type Stroke } from '../../finishing/chords.ts';
import { distanceToStroke, type Rectangle } from '../../finishing/rectangle.ts';
import type { Point } from '../../geometry/point.ts';
import type { Picture, PictureLine, PictureWord } from '../booklet/picture.ts';
import { crossArm, type PlacedName, placesBeside } from './name-places.ts';

/** A name and the point of a picture that it belongs to, mm. */
export interface Named {
  readonly name: string;
  readonly at: Point;
}

/** What is drawn where names are to stand: its size and lines, and all points that are marked; mm. */
export interface NameGround extends Pick<Picture, 'width' | 'height' | 'lines'> {
  readonly points: readonly Point[];
}

/** What speaks against a place for a name: each time it is met, and the distances per mm. Judged by eye. */
const against = {
  name: 12,
  cross: 4,
  line: 3,
  outside: 8,
  outsideBy: 3,
  nearerToAnother: 6,
  leader: 1.5,
  leaderBy: 0.2,
} as const;

/** Names are set, and then each is set again in view of all others, so many times. */
const rounds = 4;

/**
 * Sets names beside their points, each where it least lies on another name, a line or the cross of another point, or leaves the
 * picture, and where it is nearer to its own point than to any other; or further off, with a fine line to its point.
 */
export function pointNames(
  names: readonly Named[],
  ground: NameGround,
): { readonly words: readonly PictureWord[]; readonly leaders: readonly PictureLine[] } {
  const strokes = ground.lines.flatMap(({ curves }) => curves.flatMap((curve) => chordsOf(curve, 0.1)));
  const options = names.map(({ name, at }) =>
    placesBeside(name, at).map((place) => ({ place, cost: costAlone(place, at, ground, strokes) })),
  );
  const set: (PlacedName | undefined)[] = names.map(() => undefined);
  for (let round = 0; round < rounds; round++)
    for (const [i, own] of options.entries()) {
      const others = set.filter((place, j) => j !== i && place !== undefined) as PlacedName[];
      const priced = own.map(({ place, cost }) => ({ place, cost: cost + costBeside(place, others) }));
      set[i] = priced.reduce((a, b) => (b.cost < a.cost ? b : a)).place;
    }
  return {
    words: set.flatMap((place, i) =>
      place
        ? [{ kind: 'name' as const, text: names[i]?.name ?? '', at: place.at, anchored: place.anchored }]
        : [],
    ),
    leaders: set.flatMap((place) =>
      place?.leader
        ? [{ weight: 'leader' as const, curves: [{ kind: 'line' as const, ...place.leader }] }]
        : [],
    ),
  };
}

/** What speaks against a place by what is drawn. */
function costAlone(
  { box, leader }: PlacedName,
  own: Point,
  { width, height, points }: NameGround,
  strokes: readonly Stroke[],
): number {
  const others = points.filter(({ x, y }) => x !== own.x || y !== own.y);
  const struck = strokes.filter(
    (stroke) =>
      distanceToStroke(box, stroke) < white ||
      (leader && distanceToStroke(pinhead(leader.to), stroke) < white),
  ).length;
  const crosses = others.filter((at) => fromBox(box, at) < crossArm).length;
  const passed = leader ? others.filter((at) => distanceToStroke(crossAt(at), leader) === 0).length : 0;
  const beyond = outside(box, width, height);
  const nearer = !leader && others.some((at) => fromBox(box, at) <= fromBox(box, own));
  return (
    against.line * struck +
    against.cross * (crosses + passed) +
    (beyond > 0 ? against.outside + against.outsideBy * beyond : 0) +
    (nearer ? against.nearerToAnother : 0) +
    (leader ? against.leader + against.leaderBy * Math.hypot(leader.to.x - own.x, leader.to.y - own.y) : 0)
  );
}

/** What speaks against a place by the names that are set. */
const costBeside = ({ box, leader }: PlacedName, others: readonly PlacedName[]): number =>
  others.reduce((sum, other) => {
    const onName = boxesMeet(box, other.box) ? 1 : 0;
    const onLeader = other.leader && distanceToStroke(box, other.leader) === 0 ? 1 : 0;
    const leaderOn = leader && distanceToStroke(other.box, leader) === 0 ? 1 : 0;
    return sum + against.name * (onName + onLeader + leaderOn);
  }, 0);

/** White that a name keeps to every line, mm. */
const white = 0.2;

const fromBox = (box: Rectangle, at: Point): number => distanceToStroke(box, { from: at, to: at });

/** A speck, for a line that ends on another is taken for a part of that. */
const pinhead = (middle: Point): Rectangle => ({ middle, width: 0.2, height: 0.2 });

const crossAt = (middle: Point): Rectangle => ({ middle, width: 2 * crossArm, height: 2 * crossArm });

const boxesMeet = (a: Rectangle, b: Rectangle): boolean =>
  Math.abs(a.middle.x - b.middle.x) < (a.width + b.width) / 2 &&
  Math.abs(a.middle.y - b.middle.y) < (a.height + b.height) / 2;

/** How far a name reaches out of the picture, mm. */
function outside({ middle, width: wide, height: high }: Rectangle, width: number, height: number): number {
  const sides = Math.max(0, wide / 2 - middle.x) + Math.max(0, middle.x + wide / 2 - width);
  return sides + Math.max(0, high / 2 - middle.y) + Math.max(0, middle.y + high / 2 - height);
}
