import { basename, extname } from 'node:path';
import { edgeLength } from '../../engine/geometry/edge.ts';
import type { Issue, Result } from '../../engine/issue.ts';
import type { IssueCode } from '../../engine/issue-codes/issue-codes.ts';
import { dartedEdge } from '../../engine/pattern/dart.ts';
import type { Piece } from '../../engine/pattern/piece.ts';
import { readOutline } from '../../engine/reading/read-outline.ts';
import { withoutPictures } from '../../engine/reading/without-pictures.ts';
import { withDartsMarked } from '../../engine/shaping/mark-darts.ts';
import { ownPiece } from '../../engine/shaping/own-piece.ts';
import { takeOffAllowance } from '../../engine/shaping/take-off-allowance.ts';
import type { TracedPiece } from '../../engine/shaping/traced.ts';
import { largestDocument, readTextFile } from '../input/read-data.ts';
import { Unusable, unusable } from '../input/unusable.ts';
import { used } from '../input/used.ts';
import type { AlterOptions } from './alter-options.ts';

/** A drawing may hold the scan that was traced over: a sheet of A1 at 200 dots an inch, in grey, as JPEG, takes so many bytes. */
const largestWithPictures = 20_000_000;

/** The text of a drawing without the pictures in it, of which no line is read. */
async function readDrawing(file: string): Promise<string> {
  const text = withoutPictures(await readTextFile(file, largestWithPictures));
  if (text.length > largestDocument)
    throw unusable(
      'file-too-large',
      file,
      `${file} is larger than ${largestDocument / 1e6} MB, its pictures not counted.`,
    );
  return text;
}

/** The piece of a tracing along its stitching line, its edges under her names and its darts marked. */
export async function readOwn(
  file: string,
  options: AlterOptions,
): Promise<{ readonly traced: TracedPiece; readonly piece: Piece; readonly issues: readonly Issue[] }> {
  const read = await readTraced(file, options, options.piece);
  const traced = used(withNames(read.value, options.edges), options.units);
  const own = ownPiece(traced, toldOf(file, options));
  const piece = withDartsMarked(stitched(used(own, options.units), options));
  return { traced, piece, issues: [...read.issues, ...own.issues] };
}

/** The piece along its stitching line, where the cutting line was traced. */
const stitched = (piece: Piece, { traced, units }: AlterOptions): Piece =>
  traced === 'cutting' ? used(takeOffAllowance(piece), units) : piece;

async function readTraced(
  file: string,
  { mmPerUnit, corner, traced: line, units }: AlterOptions,
  piece: string | undefined,
) {
  const read = readOutline(await readDrawing(file), {
    corner: (corner * Math.PI) / 180,
    line,
    ...(mmPerUnit === undefined ? {} : { mmPerUnit }),
    ...(piece === undefined ? {} : { piece }),
  });
  if (!read.ok) throw new Unusable(read.issues, units);
  return read;
}

/** The traced edges under the names she gives them. */
function withNames(traced: TracedPiece, names: readonly string[] | undefined): Result<TracedPiece> {
  if (!names) return { ok: true, value: traced, issues: [] };
  const { edges } = traced;
  const path = '--edges';
  const refuse = (code: IssueCode, message: string): Result<TracedPiece> => ({
    ok: false,
    issues: [{ code, severity: 'error', path, message }],
  });
  if (names.length !== edges.length)
    return refuse(
      'edges-miscounted',
      `The outline has ${edges.length} edges, but there are ${names.length} names.`,
    );
  if (new Set(names).size < names.length) return refuse('edge-twice', 'Every edge needs a name of its own.');
  const renamed = new Map(edges.map(({ name }, i) => [name, names[i] ?? name]));
  const of = (name: string): string => renamed.get(name) ?? name;
  const value = {
    ...traced,
    edges: edges.map((edge) => ({ ...edge, name: of(edge.name) })),
    notches: traced.notches.map((notch) => ({ ...notch, edge: of(notch.edge) })),
  };
  return { ok: true, value, issues: [] };
}

const toldOf = (file: string, { name, allowance, hemAllowance, fold, hem }: AlterOptions) => ({
  name: name ?? basename(file, extname(file)).slice(0, 40),
  allowance,
  hem: hemAllowance,
  folds: fold ?? [],
  hems: hem ?? [],
});

/** The edge it is sewn to: `FILE.svg#edge`, or `FILE.svg#piece/edge` where the drawing holds several pieces. */
export async function readPartner(options: AlterOptions) {
  if (!options.partner) return undefined;
  const [file, named] = options.partner;
  const slash = named.indexOf('/');
  const [piece, edge] = slash < 0 ? [undefined, named] : [named.slice(0, slash), named.slice(slash + 1)];
  const traced = await readTraced(file, options, piece);
  const has = (names: readonly string[]): readonly string[] =>
    names.filter((wanted) => traced.value.edges.some(({ name }) => name === wanted));
  const told = toldOf(file, options);
  const known = { ...told, folds: has(told.folds), hems: has(told.hems) };
  const drawn = withDartsMarked(stitched(used(ownPiece(traced.value, known), options.units), options));
  const own = dartedEdge(drawn.edges, edge);
  if (own.length === 0) {
    const names = drawn.edges.map(({ name }) => name).join(', ');
    throw unusable('no-such-edge', file, `${file} has no edge called “${edge}”. Its edges are: ${names}.`);
  }
  // What is to be said of its drawing is said under its name: the piece itself was drawn elsewhere.
  const issues = traced.issues.map((issue) => ({ ...issue, path: file }));
  return { piece: drawn, edge, issues, length: own.reduce((sum, part) => sum + edgeLength(part), 0) };
}
