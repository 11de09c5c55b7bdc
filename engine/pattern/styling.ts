/** One choice that a draft leaves open. Lengths are mm, shares and ratios plain numbers, angles degrees. */
export type Choice =
  | {
      readonly kind: 'number';
      readonly name: string;
      readonly help: string;
      readonly unit: 'mm' | 'share' | 'ratio' | 'degrees' | 'count';
      readonly default: number;
      readonly min: number;
      readonly max: number;
      /** On whose word the default rests, where it rests on any. */
      readonly source?: string;
    }
  /** A number that the draft works out for this body unless one is given. */
  | {
      readonly kind: 'number or auto';
      readonly name: string;
      readonly help: string;
      readonly unit: 'mm' | 'share' | 'ratio' | 'degrees' | 'count';
      readonly default: 'auto';
      readonly min: number;
      readonly max: number;
      readonly source?: string;
    }
  | {
      readonly kind: 'word';
      readonly name: string;
      readonly help: string;
      readonly default: string;
      readonly words: readonly string[];
    };

/** The choices made for one garment: every declared choice has a value within its range. */
export type Styling = Readonly<Record<string, number | string>>;

/** The styling of a draft with these choices, each with its own type: what a draft's steps read from. */
export type StylingOf<Choices extends readonly Choice[]> = {
  readonly [C in Choices[number] as C['name']]: C extends { readonly kind: 'number' }
    ? number
    : C extends { readonly kind: 'number or auto' }
      ? number | 'auto'
      : C extends { readonly words: readonly (infer Word)[] }
        ? Word
        : never;
};
