import * as z from 'zod';
import { issue } from './issue.ts';
import type { Printed } from './printed.ts';

const numeric = {
  name: z.string(),
  help: z.string(),
  unit: z.enum(['mm', 'share', 'ratio', 'degrees', 'count']),
  min: z.number(),
  max: z.number(),
  source: z.string().optional().describe('On whose word the default rests.'),
};

const choice = z.union([
  z.strictObject({ kind: z.literal('number'), ...numeric, default: z.number() }),
  z.strictObject({ kind: z.literal('number or auto'), ...numeric, default: z.literal('auto') }),
  z.strictObject({
    kind: z.literal('word'),
    name: z.string(),
    help: z.string(),
    default: z.string(),
    words: z.array(z.string()),
  }),
]);

/** What `bodkin list` prints. */
export const garments = z.array(
  z.strictObject({ name: z.string(), title: z.string(), choices: z.array(choice) }),
);

export type GarmentsResult = Printed<typeof garments>;

/** What `bodkin explain` prints. */
export const explained = z.array(
  z.strictObject({ code: issue.shape.code, means: z.string().describe('What it means, and what to do.') }),
);

export type ExplainedResult = Printed<typeof explained>;
