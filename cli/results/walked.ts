import { comparison } from './comparison.ts';
import type { Printed } from './printed.ts';
import { report } from './report.ts';

/** What `bodkin walk` prints of one garment or sheet. */
export const walked = report.extend({
  comparison: comparison.optional().describe('With --before.'),
});

export type WalkedResult = Printed<typeof walked>;
