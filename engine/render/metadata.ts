import * as z from 'zod';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';

/**
 * What a written SVG says about itself besides its paths: how the pieces belong together. Everything that can be
 * measured on the paper stays out, so that reading the file back measures the paper.
 */
const name = z.string().min(1).max(200);
const text = z.string().max(2000);
const mm = z.number();
const list = <T extends z.ZodType>(item: T) => z.array(item).max(1000);

const edgeRef = z.strictObject({ piece: name, edge: name, reversed: z.literal(true).exactOptional() });

const seam = z.strictObject({
  name,
  a: list(edgeRef).min(1),
  b: list(edgeRef).min(1),
  ease: mm,
  gatherRatio: z.number().positive(),
  felled: z.literal(true).exactOptional(),
});

const corner = z.strictObject({ piece: name, edge: name, seam: name });

const join = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('across'), name, a: corner, b: corner }),
  z.strictObject({ kind: z.literal('mirror'), name, a: corner }),
  z.strictObject({ kind: z.literal('along'), name, piece: name, from: name, to: name }),
]);

const girth = z.strictObject({
  level: name,
  body: mm,
  ease: mm,
  parts: list(
    z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('line'), piece: name, line: name, times: z.number() }),
      z.strictObject({ kind: z.literal('edge'), piece: name, edge: name, times: z.number() }),
    ]),
  ),
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
    }),
  ).min(1),
  notches: list(notch),
  lines: list(
    z.strictObject({
      name,
      kind: z.enum(['level', 'casing', 'gathering', 'slash', 'fold']),
      fullness: mm.exactOptional(),
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

/** The reader of `<metadata>`; `holds` tells a whole garment's sheet from the drawing of one piece. */
export const metadataSchema = z.strictObject({
  holds: z.enum(['sheet', 'piece']),
  garment: text,
  body: text,
  date: text.exactOptional(),
  seams: list(seam),
  joins: list(join),
  girths: list(girth),
  notions: list(z.strictObject({ name, count: z.number(), length: mm, note: text })),
  pieces: list(piece).min(1),
});

export type Metadata = z.infer<typeof metadataSchema>;
export type PieceMetadata = Metadata['pieces'][number];

/** What the file of these pieces says of them. One piece alone carries no seams: its neighbours are not there. */
export function metadataOf(
  garment: Garment,
  pieces: readonly Piece[],
  holds: Metadata['holds'],
  date: string | undefined,
): Metadata {
  const whole = holds === 'sheet';
  return {
    holds,
    garment: garment.name,
    body: garment.body,
    ...(date === undefined ? {} : { date }),
    seams: whole ? garment.seams.map(({ side: _, ...s }) => ({ ...s, a: [...s.a], b: [...s.b] })) : [],
    joins: whole ? [...garment.joins] : [],
    girths: whole ? garment.girths.map((g) => ({ ...g, parts: [...g.parts] })) : [],
    notions: whole ? [...garment.notions] : [],
    pieces: pieces.map(describe),
  };
}

const describe = (drawn: Piece): PieceMetadata => ({
  name: drawn.name,
  number: drawn.number,
  edges: drawn.edges.map(({ curves: _, ...edge }) => edge),
  notches: [...drawn.notches],
  lines: drawn.lines.map(({ curves: _, ...line }) => line),
  marks: drawn.marks.map(({ name: marked, kind }) => ({ name: marked, kind })),
  cut: [...drawn.cut],
});

/**
 * JSON without any character that XML gives a meaning to, so that it stands in the file as it is and every
 * reader gets it back unchanged.
 */
export const metadataText = (metadata: Metadata): string =>
  JSON.stringify(metadata).replace(
    /[<>&\u007f-\u009f\ud800-\udfff\ufffe\uffff]/g,
    (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
