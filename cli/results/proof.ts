import * as z from 'zod';
import { issue } from './issue.ts';
import type { Printed } from './printed.ts';

const outcome = z.enum(['true', 'refused', 'not true', 'thrown']);

/** What came of cases alike. */
const group = z.strictObject({
  outcome: outcome.exclude(['true']),
  code: z.string(),
  failure: z.boolean().describe('Whether the draft is to be mended for it; what is refused by name is none.'),
  count: z.int(),
  smallest: z
    .strictObject({ body: z.looseObject({}), styling: z.looseObject({}) })
    .describe('The case with the fewest choices away from the usual.'),
  issue,
});

/** A draft held to many bodies and to the whole range of its choices. */
export const proof = z
  .strictObject({
    ok: z.boolean().describe('Somebody can be drafted, and nothing is to be mended.'),
    garment: z.string(),
    tries: z.int(),
    seed: z.int(),
    drafts: z.int(),
    counts: z.record(outcome, z.int()),
    groups: z.array(group),
    sketch: z
      .strictObject({
        redundant: z.array(z.string()),
        wished: z.array(z.string()),
        adrift: z.array(z.string()),
      })
      .nullable(),
    idle: z
      .strictObject({ measurements: z.array(z.string()), choices: z.array(z.string()) })
      .describe('Measurements that shapedBy names, and choices, that change nothing.'),
  })
  .meta({ id: 'proof' });

export type ProofResult = Printed<typeof proof>;
