/** Something that can be written of a garment: what it is for, and where it lies among what is offered. */
interface TakeableEntry {
  readonly words: string;
  /** Where it is asked for by itself. */
  readonly shelf?: Shelf;
  /** What it is called as a file, where that hangs on nothing. */
  readonly file?: string;
  readonly says?: string;
}

/** What is offered together, in the order in which it is offered. */
export const shelves = ['On paper', 'To sew by', 'To learn from', 'For a cutting machine'] as const;
export type Shelf = (typeof shelves)[number];

/** What can be written of a garment, in the order in which it is offered. */
export const takeables = {
  pattern: {
    words: 'the pattern on paper',
    shelf: 'On paper',
    says: '1:1, in tiles behind a cover that maps them, or whole',
  },
  projector: {
    words: 'the pattern for a projector',
    shelf: 'On paper',
    says: '1:1 for a projector over the table',
  },
  sheet: { words: 'all pieces on one sheet, as SVG' },
  pieces: { words: 'each piece by itself, as SVG' },
  dxf: {
    words: 'cutting file, curves as polylines',
    shelf: 'For a cutting machine',
    file: 'cutting.dxf',
    says: 'for any machine: curves as polylines',
  },
  'dxf-curves': {
    words: 'cutting file, exact curves',
    shelf: 'For a cutting machine',
    file: 'cutting-curves.dxf',
    says: 'exact curves',
  },
  'sewing print': {
    words: 'the sewing page, to print',
    shelf: 'To sew by',
    file: 'sewing.pdf',
    says: 'step by step, with what to buy',
  },
  'sewing page': {
    words: 'the sewing page, for a screen',
    shelf: 'To sew by',
    file: 'sewing.html',
    says: 'the same for a screen',
  },
  'lesson print': {
    words: 'the lesson, to print',
    shelf: 'To learn from',
    file: 'lesson.pdf',
    says: 'how it is drawn, with her numbers',
  },
  'lesson page': {
    words: 'the lesson, for a screen',
    shelf: 'To learn from',
    file: 'lesson.html',
    says: 'the same for a screen',
  },
  report: { words: 'every figure of the checks, as data' },
  body: { words: 'her measurements' },
} as const satisfies Readonly<Record<string, TakeableEntry>>;

export type Takeable = keyof typeof takeables;

export const takeableNames = Object.keys(takeables) as readonly Takeable[];

/** What of a shelf is offered, each under the name of its file. */
export const offeredOn = (
  shelf: Shelf,
  garment: string,
  paper: string,
): readonly { readonly writing: Takeable; readonly file: string; readonly says: string }[] =>
  takeableNames.flatMap((writing) => {
    const entry: TakeableEntry = takeables[writing];
    if (entry.shelf !== shelf) return [];
    const file = entry.file ?? patternName(garment, writing === 'projector' ? writing : paper);
    return [{ writing, file, says: entry.says ?? '' }];
  });

/** The file of the pattern on a paper, such as `dress-a4.pdf`. */
export const patternName = (garment: string, paper: string): string =>
  `${garment}-${paper.replace(/[^a-z0-9.]+/gi, '-')}.pdf`;
