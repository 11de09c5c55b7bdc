import * as z from 'zod';
import { issues } from './issue.ts';
import { cutList, materials } from './materials.ts';
import type { Printed } from './printed.ts';

/** What `--also` wrote. */
export const cuttingFiles = z.array(z.string()).optional().describe('With --also: the cutting files.');

const made = { ok: z.boolean(), garment: z.string(), body: z.string() };

/** What `bodkin print` prints. */
export const printed = z.strictObject({
  ...made,
  paper: z.string(),
  pages: z.array(z.strictObject({ width: z.number(), height: z.number() })),
  tiles: z.array(z.string()),
  columns: z.int(),
  rows: z.int(),
  leftOut: z.int().describe('Tiles without any line.'),
  fewestByArea: z.int().describe('So many sheets the area alone would need.'),
  cuttingFiles,
  issues,
});

export type PrintedResult = Printed<typeof printed>;

/** What `bodkin teach` prints. */
export const written = z.strictObject({
  ...made,
  steps: z.array(z.strictObject({ number: z.int(), title: z.string() })),
  files: z.array(z.string()).describe('What was written into the folder.'),
  issues,
});

export type WrittenResult = Printed<typeof written>;

/** What `bodkin sew` prints. */
export const sewn = written.extend({ cutList, materials });

export type SewnResult = Printed<typeof sewn>;
