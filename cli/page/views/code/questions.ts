import '../../no-made-code.ts';
import * as z from 'zod';
import type { TurnedRules } from '../../../../drafts/index.ts';
import type { BodyFields } from '../../body-form.ts';
import type { Lesson } from '../learn/lesson.ts';

/** What a draft that is run apart is asked. Plain data. */
export type RunQuestion =
  | {
      readonly kind: 'draft';
      readonly body: BodyFields;
      readonly choices: Readonly<Record<string, string>>;
      readonly turned: TurnedRules;
    }
  /** What it is to be held to: these bodies, a grid of others, and both ends of every choice. */
  | { readonly kind: 'cases'; readonly bodies: readonly BodyFields[] }
  | ({ readonly kind: 'try' } & Trial);

/** What it answers. */
export type RunAnswer =
  | RanDraft
  | TriedCase
  | { readonly kind: 'cases'; readonly cases: readonly Trial[] }
  /** The code could not be begun. */
  | { readonly kind: 'failed'; readonly message: string; readonly line?: number };

export interface RanDraft {
  readonly kind: 'drafted';
  readonly name: string;
  readonly title: string;
  readonly ok: boolean;
  readonly issues: readonly CodeIssue[];
  /** The sheet of all pieces, as SVG that is only ever shown as a picture. */
  readonly sheet?: string;
  readonly lesson?: Lesson;
}

export interface TriedCase {
  readonly kind: 'tried';
  readonly outcome: 'true' | 'refused' | 'not true' | 'thrown';
  readonly issues: readonly CodeIssue[];
}

/** What is wrong, in the reader's unit, with its place in the draft's files where that is known. */
export interface CodeIssue {
  readonly code: string;
  readonly severity: 'error' | 'warning' | 'note';
  readonly path: string;
  readonly message: string;
  readonly source?: { readonly file: string; readonly line: number };
}

/** One thing that a draft is held to. */
export interface Trial {
  readonly body: BodyFields;
  readonly styling: Readonly<Record<string, string | number>>;
}

/* What comes back was made by code that nobody has looked at: nothing but data of these shapes is let in. */

const text = z.string().max(20_000);
const place = z.object({ file: text, line: z.number() });
const codeIssue = z.object({
  code: text,
  severity: z.enum(['error', 'warning', 'note']),
  path: text,
  message: text,
  source: z.exactOptional(place),
});
const ground = z.object({
  from: z.enum(['measurement', 'choice', 'rule', 'fitting', 'step']),
  name: text,
  number: text,
  amount: text,
  mm: z.exactOptional(z.number()),
  says: text,
  step: z.exactOptional(z.number()),
  rule: z.exactOptional(
    z.object({ id: text, value: z.number(), unit: z.enum(['mm', 'degrees', 'ratio', 'per mm']) }),
  ),
});
const drawing = z.object({
  on: text,
  lines: z.array(
    z.object({
      name: text,
      d: z.string().max(200_000),
      length: z.number(),
      reach: z.array(z.tuple([z.number(), z.number()])),
    }),
  ),
  points: z.array(z.object({ name: text, x: z.number(), y: z.number() })),
});
const taughtStep = z.object({
  number: z.number(),
  heading: text,
  title: text,
  words: z.array(
    z.object({ text, is: z.union([z.enum(['words', 'outcome']), z.object({ from: z.number() })]) }),
  ),
  source: text,
  places: z.array(text),
  grounds: z.array(ground),
  mm: z.exactOptional(z.number()),
  amount: z.exactOptional(text),
  draws: z.array(drawing),
});
const spot = z.object({ x: z.number(), y: z.number() });
const dimension = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('straight'), on: text, of: text, from: spot, to: spot }),
  z.object({ kind: z.literal('line'), on: text, of: text, name: text, d: z.string().max(200_000) }),
  z.object({
    kind: z.literal('parts'),
    on: text,
    of: text,
    times: z.number(),
    parts: z
      .array(
        z.union([
          z.object({ on: text, from: spot, to: spot }),
          z.object({ on: text, d: z.string().max(200_000) }),
        ]),
      )
      .max(5000),
  }),
  z.object({ kind: z.literal('angle'), on: text, of: text, at: spot, from: spot, to: spot }),
]);
const lesson = z.object({
  garment: text,
  body: text,
  steps: z.array(taughtStep).max(5000),
  dimensions: z.array(dimension).max(5000),
});
const ranDraft = z.object({
  kind: z.literal('drafted'),
  name: text,
  title: text,
  ok: z.boolean(),
  issues: z.array(codeIssue).max(2000),
  sheet: z.exactOptional(z.string().max(20_000_000)),
  lesson: z.exactOptional(lesson),
});
const verdict = z.object({
  kind: z.literal('tried'),
  outcome: z.enum(['true', 'refused', 'not true', 'thrown']),
  issues: z.array(codeIssue).max(2000),
});
const trials = z.object({
  kind: z.literal('cases'),
  cases: z
    .array(
      z.object({
        body: z.record(z.string(), z.unknown()),
        styling: z.record(z.string(), z.union([z.string(), z.number()])),
      }),
    )
    .max(2000),
});
const failed = z.object({ kind: z.literal('failed'), message: text, line: z.exactOptional(z.number()) });

export const runAnswer: z.ZodType<RunAnswer> = z.discriminatedUnion('kind', [
  ranDraft,
  verdict,
  trials,
  failed,
]);
