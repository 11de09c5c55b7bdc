import * as z from 'zod';
import { issues } from './issue.ts';
import type { Printed } from './printed.ts';

/** What `bodkin draft --bodies --json` prints. */
export const draftedBodies = z.array(
  z.strictObject({
    id: z
      .union([z.string(), z.number()])
      .describe('The body’s own id, or its name, or the number of its line.'),
    ok: z.boolean(),
    folder: z.string().nullable().describe('Below that of --out; null where nothing could be drafted.'),
    issues,
  }),
);

export type DraftedBodiesResult = Printed<typeof draftedBodies>;
