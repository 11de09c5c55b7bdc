import { measurementNames } from '../engine/body/body.ts';
import { withSize } from '../engine/body/with-size.ts';
import { chosenFrom } from '../engine/chosen-from.ts';
import type { Sketch } from '../engine/constraints/sketch.ts';
import type { FoundFrom } from '../engine/excluded-relation.ts';
import type { DraftingTable } from '../engine/pattern/drafting-table.ts';
import type { Choice } from '../engine/pattern/styling.ts';

/**
 * How far something is moved, as a share of itself, or of the range of a choice, to see whether a draft would come
 * nearer: hardly.
 */
export const NUDGE = 1e-4;

/** Something that a conflict may come from, and the sketch there would be were it larger by `way` times the nudge. */
export interface Suspect {
  readonly from: FoundFrom;
  readonly way: 1 | -1;
  /** Nothing where none can be planned. */
  readonly sketch: () => Sketch | undefined;
}

/** The sketch that a draft plans on an empty table; nothing where it plans none. */
export type SketchOf<Choices extends readonly Choice[]> = (
  table: DraftingTable<Choices>,
) => Sketch | undefined;

/** Every measurement, and every choice that is a number which can be a little other than it is. */
export function suspectsOf<Choices extends readonly Choice[]>(
  table: DraftingTable<Choices>,
  sketchOf: SketchOf<Choices>,
): readonly Suspect[] {
  const { body, choices } = table;
  const styling: Readonly<Record<string, number | string>> = table.styling;
  const measurements = measurementNames.map((name): Suspect => {
    const other = withSize(body, name, body.size[name] * (1 + NUDGE));
    return {
      from: { kind: 'measurement', name },
      way: 1,
      sketch: () => sketchOf(table.afresh({ body: other })),
    };
  });
  const chosen = choices.flatMap((choice): readonly Suspect[] => {
    const made = styling[choice.name];
    if (choice.kind === 'word' || choice.unit === 'count' || typeof made !== 'number') return [];
    // Towards the middle, so that the choice stays one that the draft allows.
    const way = made > (choice.min + choice.max) / 2 ? -1 : 1;
    const other = { [choice.name]: made + way * NUDGE * (choice.max - choice.min) };
    return [
      {
        from: { kind: 'choice', name: choice.name },
        way,
        sketch: () => sketchOf(table.afresh({ styling: other })),
      },
    ];
  });
  return [...measurements, ...chosen];
}

/** A word that was chosen, and the sketch there would be with another. */
export interface ChosenWord {
  readonly from: FoundFrom;
  readonly isUsual: boolean;
  /** With the usual word, or where that was chosen the first other with which one can be planned; nothing where none can. */
  readonly sketch: () => Sketch | undefined;
}

/** Every choice among words: it cannot be moved a little, so what it is behind shows by what another word asks otherwise. */
export function chosenWords<Choices extends readonly Choice[]>(
  table: DraftingTable<Choices>,
  sketchOf: SketchOf<Choices>,
): readonly ChosenWord[] {
  const styling: Readonly<Record<string, number | string>> = table.styling;
  return table.choices.flatMap((choice): readonly ChosenWord[] => {
    if (choice.kind !== 'word') return [];
    const made = styling[choice.name];
    const others = [choice.default, ...choice.words].filter((word) => word !== made);
    return [
      {
        from: chosenFrom(choice, made),
        isUsual: made === choice.default,
        sketch: () => {
          for (const word of others) {
            const sketch = sketchOf(table.afresh({ styling: { [choice.name]: word } }));
            if (sketch) return sketch;
          }
          return undefined;
        },
      },
    ];
  });
}

/** A length on what was drawn before, and the sketch there would be were it longer by the nudge. */
export const drawnBefore = (name: string, sketch: (times: number) => Sketch): Suspect => ({
  from: { kind: 'drawing', name },
  way: 1,
  sketch: () => sketch(1 + NUDGE),
});
