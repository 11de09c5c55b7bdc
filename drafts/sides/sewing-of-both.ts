import type { EdgeRef } from '../../engine/pattern/seam.ts';
import type { SewingStep, State } from '../../engine/pattern/sewing.ts';
import type { PiecesOfBoth } from './pieces-of-both.ts';

/** What the seams and notions that a step names are called once left and right are apart. */
export interface NamesOfBoth {
  readonly seams: (name: string) => readonly string[];
  readonly notions: (name: string) => readonly string[];
}

const cutSingly =
  'A piece that says which way its printed side faces is for one side only: lay the cloth in one layer, right side up, and cut it once.';

/** A step of sewing with every piece, edge, seam and notion that it names on both sides. */
export function stepOfBoth(step: SewingStep, both: PiecesOfBoth, names: NamesOfBoth): SewingStep {
  const states = (list: readonly State[]): readonly State[] =>
    list.flatMap((state) => both.namesOf(state.piece).map((piece) => ({ ...state, piece })));
  const edges = (list: readonly EdgeRef[]): readonly EdgeRef[] =>
    list.flatMap((ref) => both.namesOf(ref.piece).map((piece) => ({ ...ref, piece })));
  const { sews, presses, turns, catches, needs, brings, closes, uses } = step;
  const cutsOne = brings?.some(({ piece, is }) => is === 'cut' && both.differ(piece)) ?? false;
  return {
    ...step,
    ...(sews && { sews: sews.flatMap(names.seams) }),
    ...(presses && { presses: presses.flatMap(names.seams) }),
    ...(turns && { turns: edges(turns) }),
    ...(catches && { catches: edges(catches) }),
    ...(needs && { needs: states(needs) }),
    ...(brings && { brings: states(brings) }),
    ...(closes && { closes: states(closes) }),
    ...(uses && { uses: uses.flatMap(names.notions) }),
    ...(cutsOne && { how: [...step.how, cutSingly] }),
  };
}
