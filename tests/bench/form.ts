import { bodyForm } from '../../engine/form/body-form.ts';
import { distanceAt } from '../../engine/form/distance/distance-at.ts';
import { distanceField } from '../../engine/form/distance/distance-field.ts';
import { shippedBodies, shippedBody } from '../drafts/drafted.ts';
import { bodyOf } from '../engine/form/people.ts';

/** Processor milliseconds of the quickest of so many runs: on a shared machine only these mean something. */
function quickest(runs: number, run: () => void): number {
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < runs; i++) {
    const from = process.cpuUsage();
    run();
    const { user, system } = process.cpuUsage(from);
    least = Math.min(least, (user + system) / 1000);
  }
  return least;
}

const bodies = shippedBodies.map((name) => bodyOf(shippedBody(name)));
for (const body of bodies)
  console.log(`form of the ${body.name}: ${quickest(10, () => bodyForm(body)).toFixed(0)} ms`);
const [first] = bodies;
if (first) {
  const form = bodyForm(first);
  console.log(`grid of 8 mm round all of it: ${quickest(4, () => distanceField(form)).toFixed(0)} ms`);
  console.log(
    `round the torso: ${quickest(4, () => distanceField(form, { parts: ['torso'] })).toFixed(0)} ms`,
  );
  const field = distanceField(form);
  const found = new Float64Array(4);
  const each = quickest(5, () => {
    for (let i = 0; i < 300_000; i++)
      distanceAt(field, (i % 600) - 300, 800 + (i % 700), (i % 250) - 125, found);
  });
  console.log(`a distance: ${((each / 300_000) * 1e6).toFixed(0)} ns`);
}
