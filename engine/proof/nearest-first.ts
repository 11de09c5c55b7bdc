import type { MeasurementName } from '../body/body.ts';
import type { BodyData } from '../body/grid.ts';
import { readBody } from '../body/read.ts';

/** What a body is pictured by. */
const pictured: readonly MeasurementName[] = ['bustGirth', 'waistGirth', 'hipGirth', 'stature'];

/** Bodies, those before that are more like the first of them: by the shares by which their girths and stature differ. What is none comes last. */
export function nearestFirst(bodies: readonly BodyData[]): readonly BodyData[] {
  const sizes = bodies.map((data) => {
    const read = readBody(data);
    return read.ok ? read.value.size : undefined;
  });
  const [usual] = sizes;
  const far = sizes.map((size) =>
    size && usual
      ? pictured.reduce((sum, name) => sum + Math.abs(Math.log(size[name] / usual[name])), 0)
      : Infinity,
  );
  return bodies
    .map((body, i) => ({ body, far: far[i] ?? Infinity }))
    .toSorted((a, b) => (a.far === b.far ? 0 : a.far - b.far))
    .map(({ body }) => body);
}
