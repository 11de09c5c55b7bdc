import type { OwnState } from '../../own-state.ts';
import type { ChoicePicture } from '../../requests/pictures.ts';

/** Pictures by choice and word. */
export type Pictures = Readonly<Record<string, Readonly<Record<string, ChoicePicture>>>>;

export interface Choosing {
  /** Those that are shown, and what the newest are for; those before stay until they come. */
  readonly pictures: Pictures;
  readonly of: string | undefined;
  /** Whether all of them have come. */
  readonly done: boolean;
}

export const choosing: OwnState<Choosing, never> = {
  empty: { pictures: {}, of: undefined, done: true },
  reduce: (own) => own,
  hear: (own, answer) =>
    answer.kind === 'pictured'
      ? {
          ...own,
          pictures: { ...own.pictures, [answer.choice]: answer.pictures },
          of: answer.of,
          done: answer.done,
        }
      : own,
};
