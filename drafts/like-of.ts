import { type Body, measurementNames } from '../engine/body/body.ts';
import { type BodyData, gridOf, middleBody } from '../engine/body/grid.ts';
import { readBody } from '../engine/body/read.ts';
import type { Like, LikeOf } from '../engine/checks/left-out.ts';
import { isDraftMistake } from '../engine/draft-mistake.ts';
import type { Draft } from '../engine/pattern/draft.ts';
import type { Wearer } from '../engine/pattern/garment.ts';
import type { Styling } from '../engine/pattern/styling.ts';
import { resolveStyling } from '../engine/pattern/styling-values.ts';

/**
 * The drafts by which a garment that was read from a file is known: its own makes the same once more, for a like body. What a garment
 * has by name hangs on its choices; the body moves figures alone.
 */
export const likeOf =
  (known: readonly Draft[]): LikeOf =>
  ({ name, choices, wearer, drawnFor }) => {
    const draft = known.find((one) => one.name === name);
    if (!draft) return { kind: 'unknown' };
    const styling = choices && resolveStyling(draft.choices, choices);
    if (!styling?.ok) return { kind: 'no choices' };
    if (drawnFor) return draftedAgain(draft, { ...drawnFor, name, known: allMeasured }, styling.value);
    for (const data of [...(wearer ? [like(wearer)] : []), middleBody, ...others]) {
      const body = readBody(data);
      const drawn = body.ok ? draft.draw(body.value, styling.value) : body;
      if (drawn.ok) return { kind: 'drafted', garment: drawn.value };
    }
    return { kind: 'unknown' };
  };

/** A sheet may say of a body what none has, over which sketches break as over a mistake in their draft. */
function draftedAgain(draft: Draft, body: Body, styling: Styling): Like {
  try {
    const again = draft.draw(body, styling);
    return again.ok ? { kind: 'drafted again', garment: again.value } : { kind: 'cannot be' };
  } catch (error) {
    if (isDraftMistake(error)) return { kind: 'cannot be' };
    throw error;
  }
}

/** Where a number came from moves no line. */
const allMeasured = Object.fromEntries(
  measurementNames.map((name) => [name, { from: 'measured' }]),
) as Body['known'];

/** A back of middle length, mm; a sheet says her girths alone. */
const BACK = 405;

const like = ({ bust, underBust, waist, hip }: Wearer): BodyData => ({
  name: 'wearer',
  units: 'mm',
  bustGirth: bust,
  underBustGirth: underBust,
  waistGirth: waist,
  hipGirth: hip,
  backNeckPointToWaist: BACK,
});

/** Bust girth of a small woman, mm. */
const SMALL = 800;
/** That of a large one, mm. */
const LARGE = 1100;
/** How tall both are, mm. */
const TALL = 1650;

/** Where choices are too much for a woman of middle size, another may carry them. */
const others = gridOf([SMALL, LARGE], ['A', 'D'], [TALL]);
