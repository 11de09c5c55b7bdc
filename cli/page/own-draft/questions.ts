import '../no-made-code.ts';
import * as z from 'zod';
import {
  type Body,
  type Garment,
  type Issue,
  type IssueCode,
  measurementNames,
  type Result,
  type Styling,
  type sensitivities,
  type TurnedRules,
} from '../../../drafts/index.ts';
import type { GarmentChoices } from '../garment-choices.ts';

/** What code that draws in the place of the program's own draft is asked by a worker. Plain data. */
export type DrawingQuestion =
  | { readonly kind: 'describe' }
  | {
      readonly kind: 'draw';
      readonly body: Body;
      readonly styling: Styling;
      readonly turned: TurnedRules;
    }
  /** How all its places answer to each measurement: that takes its sketches, which stay where it is run. */
  | { readonly kind: 'sensitivities'; readonly body: Body; readonly styling: Styling };

/** What it answers. */
export type DrawingAnswer =
  | { readonly kind: 'described'; readonly garment?: GarmentChoices; readonly issues: readonly Issue[] }
  | { readonly kind: 'drawn'; readonly drawn: Result<Garment> }
  | { readonly kind: 'sensed'; readonly found: Sensed };

type Sensed = ReturnType<typeof sensitivities>;

/* What comes back was made by code that nobody has looked at: nothing but data of these shapes is let in. */

const text = z.string().max(20_000);
const issue = z.object({
  code: z.custom<IssueCode>((code) => typeof code === 'string' && code.length <= 100),
  severity: z.enum(['error', 'warning', 'note']),
  path: text,
  message: text,
});
const issues = z.array(issue).max(500);
const name = z.string().max(200);
const number = { name, help: text, unit: z.enum(['mm', 'share', 'ratio', 'degrees', 'count']) };
const range = { min: z.number(), max: z.number(), source: z.exactOptional(text) };
const choice = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('number'), ...number, default: z.number(), ...range }),
  z.object({ kind: z.literal('number or auto'), ...number, default: z.literal('auto'), ...range }),
  z.object({
    ...{ kind: z.literal('word'), name, help: text, default: name },
    words: z.array(name).max(200),
  }),
]);
const described = z.object({
  kind: z.literal('described'),
  garment: z.exactOptional(
    z.object({
      name,
      title: text,
      choices: z.array(choice).max(500),
      shapedBy: z.array(z.enum(measurementNames)),
    }),
  ),
  issues,
});
const failed = z.object({ ok: z.literal(false), issues });
/** Whether the garment is one is looked at by what judges any draft's (`checkedGarment`); how large it is, here. */
const drawn = z.object({
  kind: z.literal('drawn'),
  drawn: z.union([z.object({ ok: z.literal(true), value: z.unknown(), issues }), failed]),
});
const slope = z.object({
  ...{ kind: z.enum(['girth', 'seam', 'level', 'edge', 'notion']), name: text },
  ...{ on: text, perMm: z.number() },
});
const sensed = z.object({
  kind: z.literal('sensed'),
  found: z.union([
    z.object({
      ok: z.literal(true),
      value: z
        .array(z.object({ measurement: z.enum(measurementNames), slopes: z.array(slope).max(20_000) }))
        .max(100),
      issues,
    }),
    failed,
  ]),
});

export const drawingAnswer = z.discriminatedUnion('kind', [described, drawn, sensed]);

/** No garment has more numbers and words; of one that has no more is looked at. */
const mostLeaves = 200_000;
/** No number of a garment is larger: lengths are mm. */
const largest = 1e6;

/** Whether data are of a size that the checks can be carried out on in good time. */
export function isModest(data: unknown): boolean {
  const waiting = [data];
  for (let leaves = 0; waiting.length > 0; leaves++) {
    const next = waiting.pop();
    if (leaves > mostLeaves) return false;
    if (typeof next === 'number' && !(Math.abs(next) <= largest)) return false;
    if (typeof next === 'string' && next.length > 20_000) return false;
    if (typeof next === 'object' && next !== null) for (const each of Object.values(next)) waiting.push(each);
  }
  return true;
}
