import * as z from 'zod';
import type { Issue } from '../issue.ts';
import { seamFinishes } from '../pattern/finishes.ts';
import type { ShapeMeasure } from '../pattern/shape.ts';
import { piecesOf } from '../pattern/shape-parts.ts';
import { instruments } from './shape/measures.ts';

const finite = z.number().refine(Number.isFinite, 'should be a finite number');
const point = z.object({ x: finite, y: finite });
const curve = z.discriminatedUnion('kind', [
  z.object({ kind: z.literal('line'), from: point, to: point }),
  z.object({ kind: z.literal('cubic'), from: point, handle1: point, handle2: point, to: point }),
]);
const curves = z.array(curve).min(1);
const text = z.string();
const ref = z.object({ piece: text, edge: text });

const piece = z.object({
  name: text,
  number: finite,
  edges: z
    .array(
      z.object({
        name: text,
        curves,
        turn: z.enum(['seam', 'fold', 'hem', 'finished', 'dart']),
        allowance: finite.min(0),
        rank: finite,
        inflections: finite,
      }),
    )
    .min(1),
  grain: z.object({ from: point, to: point }),
  notches: z.array(
    z.object({
      name: text,
      edge: text,
      at: finite,
      mark: z.enum(['single', 'double', 'fold', 'level', 'gather', 'dart']),
    }),
  ),
  lines: z.array(
    z.object({ name: text, kind: z.enum(['level', 'casing', 'gathering', 'slash', 'fold']), curves }),
  ),
  marks: z.array(z.object({ name: text, kind: z.enum(['buttonhole', 'drill', 'cross']), at: point })),
  cut: z
    .array(
      z.object({
        cloth: z.enum(['self', 'lining', 'interfacing']),
        count: finite,
        onFold: z.boolean(),
        pair: z.boolean(),
      }),
    )
    .min(1),
});

const corner = z.object({ piece: text, edge: text, seam: text });

const garment = z.object({
  name: text,
  body: text,
  pieces: z.array(piece).min(1),
  seams: z.array(
    z.object({
      name: text,
      a: z.array(ref).min(1),
      b: z.array(ref).min(1),
      ease: finite,
      gatherRatio: finite,
    }),
  ),
  joins: z.array(
    z.discriminatedUnion('kind', [
      z.object({ kind: z.literal('across'), name: text, a: corner, b: corner }),
      z.object({ kind: z.literal('mirror'), name: text, a: corner }),
      z.object({ kind: z.literal('along'), name: text, piece: text, from: text, to: text }),
    ]),
  ),
  girths: z.array(
    z.object({
      level: text,
      body: finite,
      ease: finite,
      parts: z.array(
        z.discriminatedUnion('kind', [
          z.object({ kind: z.literal('line'), piece: text, line: text, times: finite }),
          z.object({ kind: z.literal('edge'), piece: text, edge: text, times: finite }),
        ]),
      ),
    }),
  ),
  notions: z.array(z.object({ name: text, count: finite, length: finite })),
  steps: z.array(z.object({ number: finite, title: text, says: z.array(z.union([text, finite])) })),
  shapes: z.array(
    z
      .object({ name: text, kind: z.enum(Object.keys(instruments)), outside: text })
      .loose()
      .refine(isMeasured, 'it lacks some of what a measure of its kind is taken on'),
  ),
  sewing: z
    .array(
      z.object({
        title: text,
        how: z.array(text).min(1),
        sews: z.array(text).optional(),
        presses: z.array(text).optional(),
        turns: z.array(ref).optional(),
        finish: z.enum(Object.keys(seamFinishes)).optional(),
      }),
    )
    .optional(),
  issues: z.array(z.object({ code: text, message: text })),
});

/**
 * What is not as a garment should be in what a draft hands back, where no compiler has looked at it: a number that is
 * missing, a word that is none of those there are. Each is said with the piece and edge it belongs to, as
 * `draft-garment-unfit`.
 */
export function garmentFaults(made: unknown): readonly Issue[] {
  const read = garment.safeParse(made);
  if (read.success) return [];
  return read.error.issues.slice(0, MOST).map(({ path, message }): Issue => {
    const names = namesAlong(made, path);
    const field = path.filter((key) => typeof key === 'string').join(', ');
    return {
      code: 'draft-garment-unfit',
      severity: 'error',
      path: names.join('/'),
      message: `What the draft hands back is no garment yet: ${[...names.map((name) => `“${name}”`), field].join(', ')}: ${message}.`,
    };
  });
}

/** Whether a claim has all that its measure is taken on. */
function isMeasured(claim: unknown): boolean {
  try {
    return piecesOf(claim as ShapeMeasure).every((name) => typeof name === 'string');
  } catch {
    return false;
  }
}

/** More at once would only hide the first. */
const MOST = 5;

/** The names of what lies along a path into some data: a piece, then its edge. */
function namesAlong(data: unknown, path: readonly PropertyKey[]): readonly string[] {
  const names: string[] = [];
  let at = data;
  for (const key of path) {
    at = typeof at === 'object' && at !== null ? Reflect.get(at, key) : undefined;
    const name =
      typeof at === 'object' && at !== null
        ? (Reflect.get(at, 'name') ?? Reflect.get(at, 'level') ?? Reflect.get(at, 'title'))
        : undefined;
    if (typeof name === 'string') names.push(name);
  }
  return names;
}
