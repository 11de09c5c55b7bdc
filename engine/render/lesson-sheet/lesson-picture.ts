import { type Point, point } from '../../geometry/point.ts';
import { type Transform, transformedCurve } from '../../geometry/transform.ts';
import type { PlacedPoint, StepDrawing } from '../../pattern/garment.ts';
import type { Picture, PictureLine } from '../booklet/picture.ts';
import { type Drawing, extent } from './drawings.ts';
import { crossArm } from './name-places.ts';
import { pointNames } from './point-names.ts';

/** White above and below a drawing, mm: room for names of points at its edge. */
const margin = 5;

/** Every picture is this wide, mm, with the middle of its finished drawing in the middle. */
const width = 78;

/** A drawing as it stands after a step, to scale: what is new heavy and named, what stood before it light. */
export function lessonPicture({ scale, middle, added, before }: Drawing): Picture {
  const box = extent({
    points: [...before.points, ...added.points],
    lines: [...before.lines, ...added.lines],
  });
  const height = (box.bottom - box.top) / scale + 2 * margin;
  const place: Transform = (p) => point(width / 2 + (p.x - middle) / scale, margin + (p.y - box.top) / scale);
  const named = added.points.map(({ name, at }) => ({ name, at: place(at) }));
  const lines = [...axes(place, height), ...inked(before, 'cut', place), ...inked(added, 'heavy', place)];
  const points = [...before.points, ...added.points].map(({ at }) => place(at));
  const { words, leaders } = pointNames(named, { width, height, lines, points });
  return {
    width,
    height,
    lines: [
      ...lines,
      ...before.points.flatMap((each) => cross(each, 'notch', place)),
      ...added.points.flatMap((each) => cross(each, 'heavy', place)),
      ...leaders,
    ],
    words,
  };
}

/** The two lines that every drawing begins with. */
function axes(place: Transform, height: number): readonly PictureLine[] {
  const { x, y } = place(point(0, 0));
  return [
    straight('inside', point(0, y), point(width, y)),
    straight('inside', point(x, 0), point(x, height)),
  ];
}

const inked = (
  { lines }: StepDrawing,
  weight: PictureLine['weight'],
  place: Transform,
): readonly PictureLine[] =>
  lines.map(({ curves }) => ({ weight, curves: curves.map((curve) => transformedCurve(curve, place)) }));

function cross({ at }: PlacedPoint, weight: PictureLine['weight'], place: Transform): readonly PictureLine[] {
  const { x, y } = place(at);
  return [
    straight(weight, point(x - crossArm, y), point(x + crossArm, y)),
    straight(weight, point(x, y - crossArm), point(x, y + crossArm)),
  ];
}

const straight = (weight: PictureLine['weight'], from: Point, to: Point): PictureLine => ({
  weight,
  curves: [{ kind: 'line', from, to }],
});
