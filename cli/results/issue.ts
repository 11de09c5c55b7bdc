import * as z from 'zod';
import { type KnownCode, knownCodes } from '../../engine/issue-codes/issue-codes.ts';
import type { Printed } from './printed.ts';

const code = z
  .union([
    z.enum(knownCodes as readonly [KnownCode, ...KnownCode[]]),
    z.templateLiteral(['own-', z.string()]),
  ])
  .describe('What each means stands in cli/issues.md; a draft written elsewhere marks its own with “own-”.');

const unit = z.enum(['mm', 'rad', '1/mm']);

/** One of a few things asked of a drawing that exclude each other. */
const excluded = z.strictObject({
  name: z.string(),
  value: z.number(),
  unit,
  limits: z.strictObject({ min: z.number(), max: z.number(), unit }),
  whose: z.enum(['measurement', 'choice', 'drawing', 'draft']).optional(),
  from: z.array(
    z.strictObject({
      kind: z.enum(['measurement', 'choice', 'drawing']),
      name: z.string(),
      word: z.string().optional().describe('The word that was chosen, of a choice among words.'),
    }),
  ),
});

/** Something a dressmaker should know. */
export const issue = z
  .strictObject({
    code,
    severity: z
      .enum(['error', 'warning', 'note'])
      .describe('error: cannot go on. warning: unlikely, look again. note: good to know.'),
    path: z.string().describe('What it is about: a measurement, a choice, an option, or piece/edge.'),
    message: z.string().describe('A full sentence in a dressmaker’s words.'),
    limits: z
      .strictObject({ min: z.number().optional(), max: z.number().optional(), unit: z.string() })
      .nullable()
      .describe('Between which the value should have been; null where there are none.'),
    value: z
      .union([z.number(), z.string()])
      .optional()
      .describe('By how much what excludes itself misses; only with relations.'),
    relations: z
      .array(excluded)
      .optional()
      .describe('What excludes each other, where lines cannot all hold: what misses most first.'),
    source: z
      .strictObject({ file: z.string(), line: z.int() })
      .optional()
      .describe('Where it stands in the source of a draft of one’s own.'),
  })
  .meta({ id: 'issue' });

export type IssueResult = Printed<typeof issue>;

export const issues = z.array(issue);

/** Input that cannot be used: exit code 2. */
export const refusal = z
  .strictObject({ ok: z.literal(false), issues: issues.min(1) })
  .meta({ id: 'refusal', description: 'The input cannot be used; exit code 2.' });

export type RefusalResult = Printed<typeof refusal>;
