import * as z from 'zod';
import { numberIn, unitNames, writtenNumber } from '../text/units.ts';
import { type MeasurementName, measurementNames } from './body.ts';
import { cupLetters } from './cup-letters.ts';
import { fittedLevels, fittedSeams, oneSided, plainChangeNames, plainChanges } from './fitting.ts';
import { essentialNames } from './found.ts';
import { howTaken } from './how-taken.ts';
import { sides } from './side.ts';

/** A number, or a text with a fraction; what it means is read later, with the units. */
const number = z.union([
  z.number(),
  z
    .string()
    .regex(writtenNumber)
    .refine((text) => numberIn(text) !== undefined),
]);

/** Control characters, which cannot be printed and may not stand in an SVG. */
const printable = /^[^\p{Cc}\p{Cs}\uFFFE\uFFFF]*$/u;

/** Where a change was found on one side only. */
const side = z.enum(sides).describe('Her own left or right, where it is on one side only.');

/** One change found at a fitting: of a seam at a level, or by an amount alone. */
const fittingChange = z.union([
  ...(['take in', 'let out'] as const).flatMap((kind) =>
    fittedSeams.map((seam) =>
      z.strictObject({
        [kind]: z.literal(seam).describe('The seam that was pinned.'),
        level: z.enum(fittedLevels[seam]),
        by: number.describe('From the old stitching line to the new one, on each layer.'),
      }),
    ),
  ),
  ...plainChangeNames.map((name) =>
    z.strictObject({
      [name]: number.describe(plainChanges[name].help),
      ...(oneSided[name] === 'must' ? { side } : oneSided[name] === 'may' ? { side: side.optional() } : {}),
    }),
  ),
]);

const essential: ReadonlySet<MeasurementName> = new Set(essentialNames);

const measurements = Object.fromEntries(
  measurementNames.map((name) => {
    const field = number.describe(howTaken[name]);
    return [name, essential.has(name) ? field : field.optional()];
  }),
) as Record<MeasurementName, typeof number | z.ZodOptional<typeof number>>;

/** One file of measurements, field by field. */
export const bodyFile = z.strictObject({
  name: z
    .union([z.string().max(80).regex(printable), z.number()])
    .optional()
    .describe('Whose measurements these are: a role, say. It is printed on the pieces.'),
  age: z.number().min(0).max(130).optional().describe('In years. A child under 14 gets no drawstring.'),
  units: z.enum(unitNames).describe('The unit of all lengths below.'),
  ...measurements,
  cup: z
    .enum(cupLetters)
    .optional()
    .describe('The cup after EN 13402, where the under-bust girth was not measured.'),
  sure: z
    .array(z.enum(measurementNames))
    .max(measurementNames.length)
    .optional()
    .describe('Measurements that were taken twice and are right, however unlikely they look.'),
  reconcile: z
    .boolean()
    .optional()
    .describe('Measurements that contradict each other are moved to the most likely body behind them.'),
  fitting: z
    .array(fittingChange)
    .optional()
    .describe('What was found when she tried the trial bodice on, one change after the other.'),
});

export type BodyField = keyof typeof bodyFile.shape;

/** The names a file may use. */
export const bodyFields = Object.keys(bodyFile.shape) as readonly BodyField[];

/** The same as a JSON Schema, for editors to complete the fields by. */
export const bodyJsonSchema = (): object => ({
  ...z.toJSONSchema(bodyFile, { target: 'draft-7', io: 'input' }),
  title: 'Measurements of one person',
});
