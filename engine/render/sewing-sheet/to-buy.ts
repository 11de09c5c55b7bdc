/** What to buy, in words, as it stands on a sewing sheet beside what is made of it. */
export interface ToBuy {
  /** Cloth by width, under headings of the columns, and what the lengths rest on. */
  readonly cloth: {
    readonly titles: readonly string[];
    readonly rows: readonly (readonly string[])[];
    readonly note: string;
  };
  /** How much of each notion, by its name. */
  readonly notions: ReadonlyMap<string, string>;
  readonly thread: readonly (readonly [what: string, length: string, note: string])[];
  readonly threadNote: string;
}
