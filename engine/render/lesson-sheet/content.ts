import type { Garment, Step } from '../../pattern/garment.ts';
import { stepText } from '../../pattern/step-text.ts';
import { unbroken } from '../../text/length.ts';
import type { Unit } from '../../text/units.ts';
import { withLengthsIn } from '../../text/with-lengths-in.ts';
import type { Picture } from '../booklet/picture.ts';
import type { ReadAs } from '../print-options.ts';
import { Drawings } from './drawings.ts';
import { lessonPicture } from './lesson-picture.ts';
import { linePlaces } from './line-places.ts';
import { placesOf } from './places.ts';

/** Everything that stands in a lesson, whatever it is printed as. */
export interface LessonContent {
  readonly title: string;
  readonly lead: string;
  readonly chapters: readonly Chapter[];
}

/** The steps under one heading. */
export interface Chapter {
  readonly heading: string;
  readonly steps: readonly LessonStep[];
}

export interface LessonStep {
  readonly number: number;
  readonly title: string;
  /** The sentence with the numbers of this body. */
  readonly sentence: string;
  readonly source: string;
  /** Where the points lie that the step places, a line for each drawing. */
  readonly places: readonly string[];
  /** Where the lines run that it draws, a sentence each. */
  readonly lines: readonly string[];
  readonly pictures: readonly LessonPicture[];
}

export interface LessonPicture {
  /** Which drawing it is, and its scale: "back, 1 : 5". */
  readonly caption: string;
  readonly picture: Picture;
}

/** The construction of a garment for one body: heading by heading each step, and the drawing as it stands after it. */
export function lessonContent({ name, body, steps }: Garment, { date, units = 'mm' }: ReadAs): LessonContent {
  const drawings = new Drawings(steps);
  const shown = steps.map((step): readonly [Step, LessonStep] => [step, shownStep(step, drawings, units)]);
  return {
    title: `Drawing the ${name} for ${body}`,
    lead: [date, leadIn[units]].filter(Boolean).join('. '),
    chapters: inChapters(shown),
  };
}

function shownStep(step: Step, drawings: Drawings, units: Unit): LessonStep {
  const drawn = drawings.after(step);
  return {
    number: step.number,
    title: withLengthsIn(step.title, units),
    sentence: unbroken(stepText(step, units)),
    source: withLengthsIn(step.source, units),
    places: placesOf(step, units),
    lines: drawn.flatMap((drawing) => linePlaces(drawing, units)),
    pictures: drawn.map((drawing) => ({
      caption: `${drawing.on}, 1 : ${drawing.scale}`,
      picture: lessonPicture(drawing),
    })),
  };
}

/** Steps that follow each other under one heading; before the first heading stands the beginning. */
function inChapters(shown: readonly (readonly [Step, LessonStep])[]): readonly Chapter[] {
  const chapters: { readonly heading: string; readonly steps: LessonStep[] }[] = [];
  for (const [{ heading = 'To begin with' }, step] of shown) {
    if (chapters.at(-1)?.heading !== heading) chapters.push({ heading, steps: [] });
    chapters.at(-1)?.steps.push(step);
  }
  return chapters;
}

const lead = (lengths: string, strays: string): string =>
  `Each step is a sentence with the numbers of this one body; behind it stands on whose word. ${lengths}. A curve is given by places on it: straight strokes from one to the next stray from it by less than ${strays}. Every drawing begins with two lines that cross at right angles, drawn dashed: places are given from where they cross, so far out to the side and so far down or up. What a step adds is drawn heavy, what stood before it light.`;

const leadIn: Readonly<Record<Unit, string>> = {
  mm: lead('Lengths are mm', 'half a millimetre'),
  cm: lead('Lengths are cm', 'half a millimetre'),
  in: lead('Lengths are inches, each rounded to a sixteenth after everything was reckoned', 'a sixteenth'),
};
