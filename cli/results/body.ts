import * as z from 'zod';
import { type MeasurementName, measurementNames } from '../../engine/body/body.ts';
import { type FittedLevel, fittedLevels, fittedSeams, plainChangeNames } from '../../engine/body/fitting.ts';
import { sides } from '../../engine/body/side.ts';
import { issues } from './issue.ts';
import type { Printed } from './printed.ts';
import { styling } from './report.ts';

const value = z.number().describe('mm; the shoulder slope in degrees.');
const basis = z.string().describe('From what.');
const actsOn = z.array(z.string()).describe('The garments that are drawn from it.');

const measurement = z
  .union([
    z.strictObject({ value, from: z.literal('measured'), actsOn }),
    z.strictObject({
      value,
      from: z.literal('reconciled').describe('Moved, because it contradicted others.'),
      written: z.number().describe('As it was written.'),
      usualError: z.number().describe('How far a tape is usually off there.'),
      suspicion: z.enum(['misread', 'first to blame', 'one of two', 'none']),
      orElse: z.array(z.enum(measurementNames)).describe('Which others it may be instead.'),
      actsOn,
    }),
    z.strictObject({ value, from: z.literal('derived'), basis, actsOn }),
    z.strictObject({
      value,
      from: z.literal('estimated'),
      basis,
      spread: z.number().describe('One standard deviation of the likely error, in the unit of the value.'),
      actsOn,
    }),
  ])
  .meta({ id: 'measurement' });

export type MeasurementResult = Printed<typeof measurement>;

const levels = [...new Set(Object.values(fittedLevels).flat())] as readonly FittedLevel[];

const change = z.union([
  z.strictObject({
    kind: z.enum(['take in', 'let out']),
    seam: z.enum(fittedSeams),
    level: z.enum(levels),
    mm: z.number(),
  }),
  z.strictObject({ kind: z.enum(plainChangeNames), mm: z.number(), side: z.enum(sides).optional() }),
]);

/** What `bodkin body` prints. */
export const completed = z.strictObject({
  ok: z.literal(true),
  body: z.string(),
  wearer: z.enum(['adult', 'child']),
  measurements: z.strictObject(
    Object.fromEntries(measurementNames.map((name) => [name, measurement])) as Record<
      MeasurementName,
      typeof measurement
    >,
  ),
  cup: z.strictObject({
    letter: z.string(),
    difference: z.number().describe('Bust girth less under-bust girth.'),
    band: z.number().describe('cm'),
    upperChestDifference: z.number().describe('Bust girth less upper chest girth.'),
  }),
  fitting: z.array(change).describe('What was found since; the measurements are as taken before it.'),
  issues,
});

export type CompletedResult = Printed<typeof completed>;

const moved = {
  kind: z.enum(['girth', 'seam', 'level', 'edge', 'notion']),
  name: z.string(),
  on: z.string().nullable().describe('Of an edge its piece, of a level the piece and edge of its notch.'),
  mm: z.number().describe('How far it moves for one step of the measurement.'),
};

/** What `bodkin body --sensitivity` prints. */
export const sensitivity = z.strictObject({
  ok: z.literal(true),
  garment: z.string(),
  body: z.string(),
  styling,
  step: z.number().describe('How much each measurement is changed, alone.'),
  takeAgain: z.array(z.enum(measurementNames)),
  measurements: z
    .array(
      z.strictObject({
        measurement: z.enum(measurementNames),
        from: z.enum(['measured', 'reconciled', 'derived', 'estimated']),
        likelyError: z.number(),
        movesMost: z.strictObject({ ...moved, likelyOff: z.number() }).nullable(),
        moves: z.array(z.strictObject(moved)),
      }),
    )
    .describe('In the order in which it is worth taking them again.'),
  issues,
});

export type SensitivityResult = Printed<typeof sensitivity>;
