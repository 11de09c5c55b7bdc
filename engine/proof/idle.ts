import type { Body, MeasurementName } from '../body/body.ts';
import type { BodyData } from '../body/grid.ts';
import { readBody } from '../body/read.ts';
import type { Draft } from '../pattern/draft.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Choice, Styling } from '../pattern/styling.ts';
import { resolveStyling } from '../pattern/styling-values.ts';
import { bodilyShape, isAlike, wholeShape } from './garment-shape.ts';
import { makesAnother } from './makes-another.ts';
import { endsOf, type TrialCase } from './trial-case.ts';

/** What a draft asks for without need: named as what shapes it, or left open, and nothing of it follows. */
export interface Idle {
  readonly measurements: readonly MeasurementName[];
  readonly choices: readonly string[];
}

/** A measurement is moved by so much, mm: what a tape may err by, which any pattern that uses it shows. */
const MOVED = 10;

/**
 * The measurements in `shapedBy` that, moved by a centimetre up and down, change neither pieces nor notions, and the choices of which no
 * end and no word changes anything: on any of these bodies as usual, and on the first with each choice made otherwise, and each two
 * whose values are words, for some matter only where others are made so. The first case settles nearly all, and each later one is
 * tried on what is left alone.
 */
export function idleOf(draft: Draft, bodies: readonly BodyData[]): Idle {
  let measurements = draft.shapedBy;
  let choices = draft.choices;
  for (const { body, styling } of conditions(draft.choices, bodies)) {
    if (measurements.length + choices.length === 0) break;
    const [read, chosen] = [readBody(body), resolveStyling(draft.choices, styling)];
    if (!read.ok || !chosen.ok) continue;
    const made = draft.draw(read.value, chosen.value);
    if (!made.ok) continue;
    measurements = measurements.filter(
      (name) => !bodyMatters(draft, name, read.value, chosen.value, made.value),
    );
    choices = choices.filter((choice) => !choiceMatters(draft, choice, read.value, chosen.value, made.value));
  }
  return { measurements, choices: choices.map(({ name }) => name) };
}

function* conditions(choices: readonly Choice[], bodies: readonly BodyData[]): Iterable<TrialCase> {
  for (const body of bodies) yield { body, styling: {} };
  const [body] = bodies;
  if (!body) return;
  const otherwise = (choice: Choice) => endsOf(choice).map((end) => ({ [choice.name]: end }));
  const words = choices.filter(({ kind }) => kind === 'word');
  const numbers = choices.filter(({ kind }) => kind !== 'word');
  for (const choice of words) for (const styling of otherwise(choice)) yield { body, styling };
  for (const [i, one] of words.entries())
    for (const other of words.slice(i + 1))
      for (const a of otherwise(one))
        for (const b of otherwise(other)) yield { body, styling: { ...a, ...b } };
  for (const choice of numbers) for (const styling of otherwise(choice)) yield { body, styling };
}

function bodyMatters(
  draft: Draft,
  name: MeasurementName,
  body: Body,
  styling: Styling,
  made: Garment,
): boolean {
  const before = bodilyShape(made);
  return [MOVED, -MOVED].some((by) => {
    const size = { ...body.size, [name]: body.size[name] + by };
    const drawn = draft.draw({ ...body, size }, styling);
    return !drawn.ok || !isAlike(bodilyShape(drawn.value), before);
  });
}

function choiceMatters(draft: Draft, choice: Choice, body: Body, styling: Styling, made: Garment): boolean {
  const before = wholeShape(made);
  return endsOf(choice).some((end) =>
    makesAnother(draft, body, before, styling, { ...styling, [choice.name]: end }),
  );
}
