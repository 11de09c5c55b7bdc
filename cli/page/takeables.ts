/** What can be written of a garment, in the order in which it is offered: what it is for, and what it is called. */
export const takeables = {
  pattern: 'the pattern on paper',
  projector: 'the pattern for a projector',
  sheet: 'all pieces on one sheet, as SVG',
  pieces: 'each piece by itself, as SVG',
  dxf: 'cutting file, curves as polylines',
  'dxf-curves': 'cutting file, exact curves',
  'sewing print': 'the sewing page, to print',
  'sewing page': 'the sewing page, for a screen',
  'lesson print': 'the lesson, to print',
  'lesson page': 'the lesson, for a screen',
  report: 'every figure of the checks, as data',
  body: 'her measurements',
} as const;

export type Takeable = keyof typeof takeables;

export const takeableNames = Object.keys(takeables) as readonly Takeable[];

/** The file of the pattern on a paper, such as `dress-a4.pdf`. */
export const patternName = (garment: string, paper: string): string =>
  `${garment}-${paper.replace(/[^a-z0-9.]+/gi, '-')}.pdf`;
