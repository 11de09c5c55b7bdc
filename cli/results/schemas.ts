import * as z from 'zod';
import { altered } from './alter.ts';
import { completed, sensitivity } from './body.ts';
import { drafted } from './construction.ts';
import { draftedBodies } from './drafted-bodies.ts';
import { formed } from './form.ts';
import { graded, nearest } from './grade.ts';
import { refusal } from './issue.ts';
import { laid, laidShapes } from './lay.ts';
import { explained, garments } from './listed.ts';
import { printed, sewn, written } from './made.ts';
import { collected, order, orderAnswer, orderResult, sent, workedOff } from './orders.ts';
import { proof } from './proof.ts';
import { report, walkedLine } from './report.ts';
import { walked } from './walked.ts';
import { wornLine, wornResult } from './wear.ts';

/** Everything printed with --json, by the name of its schema, and what a reader of the schema is told it is. */
const results = {
  draft: ['What “bodkin draft --json” prints', z.union([drafted, refusal])],
  'draft-bodies': ['What “bodkin draft --bodies --json” prints', z.union([draftedBodies, refusal])],
  report: ['What report.json holds of a drafted garment', report],
  walk: ['What “bodkin walk --json” prints', z.union([walked, refusal])],
  'walk-line': ['What “bodkin walk --bodies” prints on each line', walkedLine],
  body: ['What “bodkin body --json” prints', z.union([completed, refusal])],
  form: [
    'What “bodkin body --form --json” prints; form.json holds the first of these',
    z.union([formed, refusal]),
  ],
  sensitivity: ['What “bodkin body --sensitivity --json” prints', z.union([sensitivity, refusal])],
  alter: [
    'What “bodkin alter --json” prints; its report.json holds the first of these',
    z.union([altered, refusal]),
  ],
  print: ['What “bodkin print --json” prints', z.union([printed, refusal])],
  sew: ['What “bodkin sew --json” prints', z.union([sewn, refusal])],
  teach: ['What “bodkin teach --json” prints', z.union([written, refusal])],
  lay: ['What “bodkin lay --json” prints of a garment, or of --shapes', z.union([laid, laidShapes, refusal])],
  wear: ['What “bodkin wear --json” prints, and worn.json holds', z.union([wornResult, refusal])],
  'wear-line': ['What “bodkin wear --bodies” prints on each line', wornLine],
  prove: ['What “bodkin prove --json” prints', z.union([proof, refusal])],
  grade: [
    'What “bodkin grade --json” prints, and with --nearest; grade.json holds the first of these',
    z.union([graded, nearest, refusal]),
  ],
  order: ['What a line of orders says, as “bodkin send” and “bodkin work” take it', order],
  'order-answer': ['What “bodkin work” prints on each line as a filter', orderAnswer],
  'order-result': ['What results.ndjson of “bodkin collect” says on each line', orderResult],
  send: ['What “bodkin send --json” prints', z.union([sent, refusal])],
  work: ['What “bodkin work --store --json” prints', z.union([workedOff, refusal])],
  collect: ['What “bodkin collect --json” prints', z.union([collected, refusal])],
  list: ['What “bodkin list --json” prints', z.union([garments, refusal])],
  explain: ['What “bodkin explain --json” prints', z.union([explained, refusal])],
  refusal: ['What every command prints with --json when its input cannot be used', refusal],
} as const satisfies Readonly<Record<string, readonly [string, z.ZodType]>>;

export type SchemaName = keyof typeof results;

export const schemaNames = Object.keys(results) as readonly SchemaName[];

/** The JSON Schema (draft 7) of one result. Lengths are mm and angles degrees unless it says otherwise. */
export function schemaOf(name: SchemaName): object {
  const [title, schema] = results[name];
  return { title, ...z.toJSONSchema(schema, { target: 'draft-7' }) };
}
