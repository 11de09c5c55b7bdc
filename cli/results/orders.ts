import * as z from 'zod';
import type { Also } from '../files/cutting-files.ts';
import { issues } from './issue.ts';
import type { Printed } from './printed.ts';
import { walkedLine } from './report.ts';

/** Everything that an order may ask to be written, in the order in which it is. */
export const writings = ['report', 'svg', 'dxf', 'dxf-curves', 'pdf'] as const satisfies readonly (
  | Also
  | 'report'
  | 'svg'
  | 'pdf'
)[];

export type Writing = (typeof writings)[number];

/** One line of a file of orders. */
export const order = z.strictObject({
  id: z
    .union([z.string(), z.int().nonnegative()])
    .describe(
      'At most 100 plain letters, figures, dots, hyphens and low lines; its files are laid under it.',
    ),
  body: z.record(z.string(), z.unknown()).describe('As in a file of measurements (body.schema.json).'),
  garment: z.string(),
  styling: z.record(z.string(), z.unknown()).optional().describe('Choices that are not the usual ones.'),
  write: z
    .array(z.enum(writings as readonly [Writing, ...Writing[]]))
    .optional()
    .describe('What to write; the report, where nothing is said.'),
  paper: z.string().max(40).optional().describe('Of the PDF; A4, where nothing is said.'),
});

const { ok, issuesLeftOut, worst } = walkedLine.shape;

/** What became of one order: a line of `results.ndjson`. */
export const orderResult = z.strictObject({
  id: z.string().nullable().describe('Null where the line is no order.'),
  garment: z.string().nullable(),
  drafted: z.boolean(),
  ok,
  issues,
  issuesLeftOut,
  worst,
  files: z.array(z.string()),
});

export type OrderResult = Printed<typeof orderResult>;

/** The same with what was written: a line of `bodkin work` as a filter, and of the answers in a store. */
export const orderAnswer = orderResult.extend({
  files: z.record(
    z.string(),
    z.union([z.string(), z.strictObject({ base64: z.string() }).describe('What is no text.')]),
  ),
});

export type OrderAnswer = Printed<typeof orderAnswer>;

const count = z.int().nonnegative();

/** What `bodkin send --json` prints. */
export const sent = z.strictObject({
  ok: z.boolean().describe('Whether every line is an order.'),
  set: z.string().describe('The name of these orders in the store.'),
  orders: count,
  chunks: count,
  done: count.describe('Chunks whose answers were in the store already.'),
  published: count.describe('Chunks that the server was told of.'),
  refused: count.describe('Lines that are no orders; SET.refused.ndjson in the store says why.'),
  issues: issues.describe('The first of those.'),
});

export type SentResult = Printed<typeof sent>;

/** What `bodkin work --store --json` prints. */
export const workedOff = z.strictObject({
  ok: z.boolean().describe('Whether none was set aside.'),
  chunks: count.describe('Answered by this process.'),
  there: count.describe('Chunks whose answers somebody else had put there.'),
  setAside: count.describe('Chunks that no worker came to an end with.'),
});

export type WorkedOffResult = Printed<typeof workedOff>;

/** What `bodkin collect --json` prints. */
export const collected = z.strictObject({
  ok: z.boolean(),
  orders: count,
  allTrue: count,
  notTrue: count,
  notDrafted: count,
  refused: count,
  files: count,
  issues,
});

export type CollectedResult = Printed<typeof collected>;
