import { type Body, type MeasurementName, measurementNames } from '../body/body.ts';
import { measurementWords } from '../body/measurement-words.ts';
import type { Issue } from '../issue.ts';
import type { Draft } from '../pattern/draft.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Styling } from '../pattern/styling.ts';
import { bodilyShape, isAlike } from './garment-shape.ts';

/** A measurement is moved by this share of itself to see whether anything follows: a few mm. */
const MOVED = 0.01;

/**
 * The measurements that change pieces or notions though the draft does not say that they shape it: all that it does not
 * name are moved together, and each alone only where something followed. A draft that draws otherwise with none moved is told of that.
 */
export function undeclared(draft: Draft, body: Body, styling: Styling, made: Garment): readonly Issue[] {
  const before = bodilyShape(made);
  // With none moved it is the same body again.
  const changes = (names: readonly MeasurementName[]): boolean => {
    const moved = names.map((name) => [name, (1 + MOVED) * body.size[name]] as const);
    const drawn = draft.draw({ ...body, size: { ...body.size, ...Object.fromEntries(moved) } }, styling);
    return !drawn.ok || !isAlike(bodilyShape(drawn.value), before);
  };
  const others = measurementNames.filter((name) => !draft.shapedBy.includes(name));
  if (others.length === 0 || !changes(others)) return [];
  if (changes([])) return [notPure(draft)];
  return others.filter((name) => changes([name])).map((name) => notNamed(name, draft));
}

const notPure = ({ name, placeOf }: Draft): Issue => {
  const source = placeOf?.(['draw']);
  return {
    code: 'draft-not-pure',
    severity: 'error',
    path: 'draw',
    message: `The ${name}, drawn twice for the same measurements and choices, is not the same: something in it is left to chance, to a clock, or to what it drew before.`,
    ...(source && { source }),
  };
};

function notNamed(name: MeasurementName, { name: draft, placeOf }: Draft): Issue {
  const source = placeOf?.(['shapedBy']);
  return {
    code: 'shaped-by-incomplete',
    severity: 'error',
    path: 'shapedBy',
    message: `The ${measurementWords(name)}, moved alone by a hundredth, changes the ${draft}, and shapedBy does not name it. Add '${name}' there.`,
    ...(source && { source }),
  };
}
