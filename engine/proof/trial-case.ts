import { type BodyData, gridOf } from '../body/grid.ts';
import { randomFrom } from '../numeric/random.ts';
import type { Choice, Styling } from '../pattern/styling.ts';
import { significant } from '../text/figure.ts';

/** One thing that a draft is held to: a body as a file has it, and the choices that are not as usual. */
export interface TrialCase {
  readonly body: BodyData;
  readonly styling: Styling;
  /** Whether its sheet is written too and read back, and its draft held to what it says shapes it: as long as the draft. */
  readonly readBack?: true;
}

/** Bodies between which everybody lies: five busts, three cups, three statures. */
const grid = gridOf([750, 900, 1050, 1250, 1500], ['AA', 'D', 'H'], [1500, 1650, 1800]);

/** So likely is each choice made otherwise in a random combination: few in most of them, so that a failure is easily read. */
const likely = [0.08, 0.15, 0.3, 0.7] as const;

/**
 * What a draft is held to: every given body and the grid, as usual; both ends and every word of each choice alone, on the
 * bodies in turn; and so many random combinations of choices, on any of these bodies. All but the sheets of the
 * grid are read back.
 */
export function trialCases(
  choices: readonly Choice[],
  bodies: readonly BodyData[],
  { tries, seed }: { readonly tries: number; readonly seed: number },
): readonly TrialCase[] {
  const everybody = [...bodies, ...grid];
  const asUsual = [
    ...bodies.map((body): TrialCase => ({ body, styling: {}, readBack: true })),
    ...grid.map((body): TrialCase => ({ body, styling: {} })),
  ];
  const ends = choices
    .flatMap((choice) => endsOf(choice).map((end) => ({ [choice.name]: end })))
    .map(
      (styling, i): TrialCase => ({
        body: oneOf(bodies.length > 0 ? bodies : grid, i),
        styling,
        readBack: true,
      }),
    );
  const random = randomFrom(seed);
  const combined = Array.from({ length: tries }, (_, i): TrialCase => {
    const body = oneOf(everybody, Math.floor(random() * everybody.length));
    const share = oneOf(likely, i);
    const changed = choices.filter(() => random() < share);
    const styling = Object.fromEntries(changed.map((c) => [c.name, anyOf(c, random)]));
    return { body, styling, readBack: true };
  });
  return [...asUsual, ...ends, ...combined];
}

/** The values of a choice at its ends, or its words; the usual one left out. */
export const endsOf = (choice: Choice): readonly (number | string)[] =>
  (choice.kind === 'word' ? choice.words : [choice.min, choice.max]).filter((end) => end !== choice.default);

/** Any value that a choice allows, with no more digits than are needed to write it down. */
function anyOf(choice: Choice, random: () => number): number | string {
  if (choice.kind === 'word') return oneOf(choice.words, Math.floor(random() * choice.words.length));
  const { min, max, unit } = choice;
  const value = min + random() * (max - min);
  const written = unit === 'count' ? Math.round(value) : significant(value, 3);
  return Math.min(max, Math.max(min, written));
}

const oneOf = <T>(all: readonly T[], i: number): T => all[i % all.length] as T;
