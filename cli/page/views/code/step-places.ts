import type { DraftFiles } from '../../../own-draft/draft-files.ts';
import type { Lesson } from '../learn/lesson.ts';

/** Where a step is written: its sentence in a file, from line to line, from 1. */
export interface StepPlace {
  readonly file: string;
  readonly from: number;
  readonly to: number;
  /** What its title says, word for word; anything may stand between two, where something is put in. */
  readonly title: readonly string[];
}

/** The words that begin a sentence, and a length that is measured on the drawing. */
const sentence = /\b(?:mm|angle|ratio|say)`((?:\\.|[^`\\])*)`|\bmeasured\(\s*['"`]((?:\\.|[^'"`\\])*)['"`]/g;

/** Where the steps of a draft are written, in the order of its files. */
export function stepPlaces(files: DraftFiles): readonly StepPlace[] {
  return Object.entries(files).flatMap(([file, text]) => {
    let [line, at] = [1, 0];
    return [...text.matchAll(sentence)].map(({ 0: whole, 1: said, 2: measured, index }): StepPlace => {
      line += breaksIn(text.slice(at, index));
      at = index;
      const title = measured ?? titleIn(said ?? '');
      return { file, from: line, to: line + breaksIn(whole), title: title.split(/\$\{[^}]{0,1000}\}/) };
    });
  });
}

const breaksIn = (text: string): number => text.split('\n').length - 1;

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

/**
 * Whether a title says these words in this order, from its first to its last. No pattern is made of them: code that somebody
 * hands out could have one that takes for ever to look up.
 */
function fits([first = '', ...others]: readonly string[], title: string): boolean {
  const last = others.pop();
  if (last === undefined) return title === first;
  if (!title.startsWith(first)) return false;
  let from = first.length;
  for (const words of others) {
    const found = title.indexOf(words, from);
    if (found < 0) return false;
    from = found + words.length;
  }
  return title.length >= from + last.length && title.endsWith(last);
}

const lettersOf = (place: StepPlace): number => place.title.join('').length;

/** The step that is written on a line, by its number: the first of that title. */
export function stepAt(
  places: readonly StepPlace[],
  file: string,
  line: number,
  { steps }: Lesson,
): number | undefined {
  const place = places.find((each) => each.file === file && each.from <= line && line <= each.to);
  return place && steps.find(({ title }) => fits(place.title, title))?.number;
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
    .filter((place) => fits(place.title, title))
    .toSorted((a, b) => lettersOf(b) - lettersOf(a))[0];
}
