import * as z from 'zod';
import { finishNames } from '../../engine/pattern/finishes.ts';
import { stitchNumbers } from '../../engine/pattern/stitches.ts';
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

const edges = z.array(z.strictObject({ piece: z.string(), edge: z.string() }));

/** One step of sewing, with what it does to which seams and edges. */
const sewingStep = z.strictObject({
  number: z.int(),
  title: z.string(),
  sews: z.array(z.string()).optional().describe('Seams of the garment, by name.'),
  turns: edges.optional().describe('Edges that are turned up, faced or bound.'),
  uses: z.array(z.string()).optional().describe('Notions, by name.'),
  stitch: z.enum(stitchNumbers).optional().describe('Stitch type, ISO 4915.'),
  seamClass: z.int().min(1).max(8).optional().describe('Seam class, ISO 4916.'),
  finish: z.enum(finishNames).optional().describe('How the raw edges are kept from fraying.'),
});

/** What `bodkin sew` prints. */
export const sewn = written.extend({ steps: z.array(sewingStep), cutList, materials });

export type SewnResult = Printed<typeof sewn>;
