import * as z from 'zod';
import { measurementNames } from '../../engine/body/body.ts';
import { cuttingFiles } from './made.ts';
import { type CutListResult, cutList, type MaterialsResult, materials } from './materials.ts';
import type { Printed } from './printed.ts';
import { report } from './report.ts';

const amount = {
  value: z.number().nullable().describe('Null where it comes to no number.'),
  unit: z.enum(['mm', 'degrees', 'ratio', 'per mm']).nullable(),
};

const measured = z.strictObject({ measurement: z.enum(measurementNames), ...amount });
const chosen = z.strictObject({ choice: z.string(), ...amount });
const ruled = z.strictObject({ rule: z.string(), ...amount });
const pinned = z.strictObject({ fitting: z.string(), ...amount });
const found = z.strictObject({ step: z.int(), ...amount });

const ground = z
  .union([measured, chosen, ruled, pinned, found])
  .meta({ id: 'ground', description: 'What a number was found from, with its value.' });

export type GroundResult = Printed<typeof ground>;

const step = z.strictObject({
  number: z.int(),
  heading: z.string().nullable(),
  title: z.string(),
  text: z.string(),
  formula: z
    .string()
    .nullable()
    .describe('As drafts/sentences.md tells; null for a step that only says something.'),
  ...amount,
  source: z.string(),
  from: z.array(ground),
});

export type StepResult = Printed<typeof step>;

/** A number and what it rests on, down to the tape measure. */
export type ReasonResult = GroundResult & {
  readonly title?: string | undefined;
  readonly text?: string | undefined;
  readonly source?: string | undefined;
  readonly from: readonly ReasonResult[];
};

const rests = { from: z.array(z.lazy((): z.ZodType<ReasonResult> => reason)) };

const reason: z.ZodType<ReasonResult> = z
  .union([
    measured.extend(rests),
    chosen.extend(rests),
    ruled.extend(rests),
    pinned.extend(rests),
    found.extend({
      title: z.string().optional(),
      text: z.string().optional(),
      source: z.string().optional(),
      ...rests,
    }),
  ])
  .meta({ id: 'reason', description: 'A number and what it rests on; a step told before is told without.' });

/** What `bodkin draft` prints: the report, what to cut and to buy, and with --steps and --why the construction. */
export const drafted = report.extend({
  cutList: cutList.optional().describe('None where nothing could be drafted.'),
  materials: materials.optional().describe('The same; `needed` is always null here.'),
  cuttingFiles,
  steps: z.array(step).optional().describe('With --steps.'),
  why: z.array(reason).optional().describe('With --why: each step of that title.'),
});

export type DraftedResult = Printed<typeof report> & {
  readonly cutList?: CutListResult;
  readonly materials?: MaterialsResult;
  readonly cuttingFiles?: readonly string[];
  readonly steps?: readonly StepResult[];
  readonly why?: readonly ReasonResult[];
};
