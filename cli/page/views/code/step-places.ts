import type { DraftFiles } from '../../../draft-files.ts';
import type { Lesson } from '../learn/lesson.ts';

/** Where a step is written: its sentence in a file, from line to line, from 1. */
export interface StepPlace {
  readonly file: string;
  readonly from: number;
  readonly to: number;
  /** What its title says; anything may stand where something is put in. */
  readonly title: RegExp;
}

/** The words that begin a sentence, and a length that is measured on the drawing. */
const sentence = /\b(?:mm|angle|ratio|say)`((?:\\.|[^`\\])*)`|\bmeasured\(\s*['"`]((?:\\.|[^'"`\\])*)['"`]/g;

/** Where the steps of a draft are written, in the order of its files. */
export function stepPlaces(files: DraftFiles): readonly StepPlace[] {
  return Object.entries(files).flatMap(([file, text]) =>
    [...text.matchAll(sentence)].map(({ 0: whole, 1: said, 2: measured, index }): StepPlace => {
      const from = text.slice(0, index).split('\n').length;
      const title = measured ?? titleIn(said ?? '');
      return { file, from, to: from + whole.split('\n').length - 1, title: pattern(title) };
    }),
  );
}

/** The words before the first colon that stands in no bracket of something put in. */
function titleIn(said: string): string {
  let depth = 0;
  for (let i = 0; i < said.length; i++) {
    if (said[i] === '{') depth++;
    else if (said[i] === '}') depth--;
    else if (said[i] === ':' && depth === 0) return said.slice(0, i);
  }
  return said;
}

const pattern = (title: string): RegExp =>
  new RegExp(
    `^${title
      .split(/\$\{[^}]*\}/)
      .map((words) => words.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
      .join('.*')}$`,
    's',
  );

/** The step that is written on a line, by its number: the first of that title. */
export function stepAt(
  places: readonly StepPlace[],
  file: string,
  line: number,
  { steps }: Lesson,
): number | undefined {
  const place = places.find((each) => each.file === file && each.from <= line && line <= each.to);
  return place && steps.find(({ title }) => place.title.test(title))?.number;
}

/** Where a step is written: of several whose titles fit, the one that has most of its words written out. */
export function placeOfStep(
  places: readonly StepPlace[],
  number: number,
  { steps }: Lesson,
): StepPlace | undefined {
  const title = steps.find((step) => step.number === number)?.title;
  if (title === undefined) return undefined;
  return places
    .filter((place) => place.title.test(title))
    .toSorted((a, b) => b.title.source.length - a.title.source.length)[0];
}
