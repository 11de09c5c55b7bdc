import * as z from 'zod';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import type { ShapeClaim } from '../pattern/shape.ts';
import { writtenNotions } from '../pattern/written-notions.ts';
import { unitNames } from '../text/units.ts';
import { digestOf } from './digest.ts';
import { drawnFor } from './metadata-body.ts';
import { corner, edgeRef, girthParts, list, mm, name, text } from './metadata-parts.ts';
import { shape } from './metadata-shapes.ts';
import type { ReadAs } from './print-options.ts';

const seam = z.strictObject({
  name,
  a: list(edgeRef, 1),
  b: list(edgeRef, 1),
  ease: mm,
  gatherRatio: z.number().positive(),
  felled: z.literal(true).exactOptional(),
});

const ofJoin = { name, turns: z.literal(true).exactOptional() };

const join = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('across'), ...ofJoin, a: corner, b: corner }),
  z.strictObject({ kind: z.literal('mirror'), ...ofJoin, a: corner }),
  z.strictObject({ kind: z.literal('along'), ...ofJoin, piece: name, from: name, to: name }),
]);

const girth = z.strictObject({
  level: name,
  body: mm,
  ease: mm,
  limb: z.literal(true).exactOptional(),
  parts: list(z.discriminatedUnion('kind', girthParts)),
});

const notch = z.strictObject({
  name,
  edge: name,
  at: mm,
  mark: z.enum(['single', 'double', 'fold', 'level', 'gather', 'dart']),
});

const piece = z.strictObject({
  name,
  number: z.number(),
  edges: list(
    z.strictObject({
      name,
      turn: z.enum(['seam', 'fold', 'hem', 'finished', 'dart']),
      allowance: mm,
      rank: z.number(),
      inflections: z.number(),
      open: z.literal(true).exactOptional(),
    }),
    1,
  ),
  notches: list(notch),
  lines: list(
    z.strictObject({
      name,
      kind: z.enum(['level', 'casing', 'gathering', 'slash', 'fold']),
      fullness: mm.exactOptional(),
      girth: name.exactOptional(),
      text: text.exactOptional(),
    }),
  ),
  marks: list(z.strictObject({ name, kind: z.enum(['buttonhole', 'drill', 'cross']) })),
  cut: list(
    z.strictObject({
      cloth: z.enum(['self', 'lining', 'interfacing']),
      count: z.number(),
      onFold: z.boolean(),
      pair: z.boolean(),
      printedSide: z.enum(['up', 'down']).exactOptional(),
    }),
  ),
});

/**
 * What a written SVG says about itself besides its paths: how the pieces belong together. Everything that can be
 * measured on the paper stays out, so that reading the file back measures the paper. Of `<metadata>` this is the reader; `holds` tells a whole garment's sheet from the drawing of one piece.
 */
export const metadataSchema = z.strictObject({
  holds: z.enum(['sheet', 'piece']),
  garment: text,
  body: text,
  wearer: z.strictObject({ cup: text, bust: mm, underBust: mm, waist: mm, hip: mm }).exactOptional(),
  /** Made otherwise than usual; not said in a sheet written before choices were noted. */
  choices: z.record(name, z.union([text, z.number()])).exactOptional(),
  /** The body, without a name; not said in a sheet written before it could be drafted again. */
  drawnFor: drawnFor.exactOptional(),
  /** In which its lengths are told; mm where nothing is said. */
  units: z.enum(unitNames).exactOptional(),
  date: text.exactOptional(),
  seams: list(seam),
  joins: list(join),
  girths: list(girth),
  /** None in a sheet written before shapes were measured. */
  shapes: list(shape).default([]),
  notions: list(z.strictObject({ name, count: z.number(), length: mm, note: text })),
  pieces: list(piece, 1),
  /** Of all the rest, as it was written (`digestOf`). */
  digest: name.exactOptional(),
});

export type Metadata = z.infer<typeof metadataSchema>;
export type PieceMetadata = Metadata['pieces'][number];

/** What the file of these pieces says of them. One piece alone carries no seams: its neighbours are not there. */
export function metadataOf(
  garment: Garment,
  pieces: readonly Piece[],
  holds: Metadata['holds'],
  { date, units = 'mm' }: ReadAs,
): Metadata {
  const whole = holds === 'sheet';
  return {
    holds,
    garment: garment.name,
    body: garment.body,
    ...(garment.wearer && { wearer: garment.wearer }),
    ...(garment.choices && { choices: garment.choices }),
    ...(whole && garment.drawnFor && { drawnFor: garment.drawnFor }),
    ...(units === 'mm' ? {} : { units }),
    ...(date === undefined ? {} : { date }),
    seams: whole ? garment.seams.map(({ side: _, ...seam }) => seam) : [],
    joins: whole ? garment.joins : [],
    girths: whole ? garment.girths : [],
    shapes: whole ? garment.shapes.filter(measuredOnPaper) : [],
    notions: whole ? [...writtenNotions(garment.notions)] : [],
    pieces: pieces.map(describe),
  };
}

const measuredOnPaper = (claim: ShapeClaim): claim is Exclude<ShapeClaim, { kind: 'drafted' }> =>
  claim.kind !== 'drafted';

const describe = (drawn: Piece): PieceMetadata => ({
  name: drawn.name,
  number: drawn.number,
  edges: drawn.edges.map(({ curves: _, ...edge }) => edge),
  notches: drawn.notches.map(({ depth: _, ...notch }) => notch),
  lines: drawn.lines.map(({ curves: _, ...line }) => line),
  marks: drawn.marks.map(({ name: marked, kind }) => ({ name: marked, kind })),
  cut: drawn.cut,
});

/** What a file says of itself, sealed: with the digest of all of it at its end. */
export const sealed = (metadata: Metadata): Metadata => ({ ...metadata, digest: digestOf(metadata) });

/** Whether claims are as they were sealed. */
export function isAsSealed(claims: object): boolean {
  const { digest, ...rest } = claims as { readonly digest?: unknown };
  return digest === digestOf(rest);
}

/**
 * JSON without any character that XML gives a meaning to, so that it stands in the file as it is and every
 * reader gets it back unchanged.
 */
export const metadataText = (metadata: Metadata): string =>
  JSON.stringify(metadata).replace(
    /[<>&\u007f-\u009f\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\ud800-\udfff\ufffe\uffff]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
