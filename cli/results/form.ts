import * as z from 'zod';
import { measurementNames } from '../../engine/body/body.ts';
import { formChoiceNames } from '../../engine/form/choices.ts';
import { landmarkNames } from '../../engine/form/form.ts';
import { issues } from './issue.ts';
import type { Printed } from './printed.ts';

const place = z
  .tuple([z.number(), z.number(), z.number()])
  .describe('mm: to the wearer’s left, up from the floor, forward.');

/** What `bodkin body --form` prints, and form.json holds. */
export const formed = z.strictObject({
  ok: z.literal(true),
  body: z.string(),
  files: z.array(z.string()),
  tapes: z
    .array(
      z.strictObject({
        measurement: z.enum(measurementNames),
        given: z.number(),
        taken: z.number().describe('By a tape on the form, which bridges hollows.'),
        bound: z.number().describe('Within what it should be given back.'),
        held: z.boolean(),
      }),
    )
    .describe('mm'),
  assumed: z.array(
    z.strictObject({
      name: z.enum(formChoiceNames),
      says: z.string(),
      value: z.number(),
      unit: z.enum(['mm', 'degrees', 'share']),
      likely: z.tuple([z.number(), z.number()]).nullable().describe('Nine women in ten.'),
      how: z.enum(['chosen', 'found likeliest', 'assumed']),
      source: z.string(),
    }),
  ),
  sections: z.array(
    z.strictObject({
      name: z.string(),
      taken: z.number(),
      expected: z.number().describe('By the survey, for a woman of these measurements.'),
      spread: z.number(),
    }),
  ),
  notTaken: z
    .array(z.strictObject({ measurement: z.enum(measurementNames), because: z.string() }))
    .describe('Measurements that no tape is laid for.'),
  levels: z
    .strictObject({
      underarm: z.number(),
      bust: z.number(),
      underBust: z.number(),
      waist: z.number(),
      hip: z.number(),
      crotch: z.number(),
    })
    .describe('mm from the floor.'),
  landmarks: z
    .strictObject(
      Object.fromEntries(landmarkNames.map((name) => [name, place])) as Record<
        (typeof landmarkNames)[number],
        typeof place
      >,
    )
    .describe('Of what she has twice the left one.'),
  issues,
});

export type FormedResult = Printed<typeof formed>;
