import { basename, extname } from 'node:path';
import { Command } from 'commander';
import { draftBounds } from '../engine/checks/bounds.ts';
import { checkGarment } from '../engine/checks/check-garment.ts';
import { cutReady } from '../engine/checks/cut-ready.ts';
import { cuttingLines } from '../engine/finishing/cut-lines.ts';
import type { Edge } from '../engine/geometry/curve.ts';
import { edgeLength } from '../engine/geometry/edge.ts';
import { isSimple } from '../engine/geometry/inside.ts';
import { PARALLEL } from '../engine/geometry/tolerance.ts';
import type { Issue, Result } from '../engine/issue.ts';
import type { IssueCode } from '../engine/issue-codes/issue-codes.ts';
import { dartedEdge } from '../engine/pattern/dart.ts';
import type { Garment } from '../engine/pattern/garment.ts';
import type { Piece } from '../engine/pattern/piece.ts';
import { readOutline } from '../engine/reading/read-outline.ts';
import { pdfOf } from '../engine/render/pdf/write-pdf.ts';
import { pieceSvgs } from '../engine/render/svg.ts';
import { readPaper } from '../engine/render/tiles/papers.ts';
import { printPages } from '../engine/render/tiles/print-pages.ts';
import { withGrainInside } from '../engine/shaping/grain.ts';
import { withDartsMarked } from '../engine/shaping/mark-darts.ts';
import { ownPiece } from '../engine/shaping/own-piece.ts';
import { takeOffAllowance } from '../engine/shaping/take-off-allowance.ts';
import type { TracedPiece } from '../engine/shaping/traced.ts';
import { walkPartner } from '../engine/shaping/walk-partner.ts';
import { type AlterOptions, alteringOptions, outcomeOptions, readingOptions } from './alter-options.ts';
import { type AlterOutcome, alterResult, alterTables } from './alter-result.ts';
import { alteration } from './alteration.ts';
import { readFonts } from './fonts.ts';
import { jsonOption } from './options.ts';
import { plain } from './plain.ts';
import { readTextFile } from './read-data.ts';
import { sayIssues } from './say-issues.ts';
import type { ExitCode, Session } from './session.ts';
import { Unusable, unusable } from './unusable.ts';
import { json } from './walk-result.ts';
import { writeFiles } from './write-files.ts';

/** A drawing larger than this (bytes) is not read. */
const largestDrawing = 50_000_000;

/** `bodkin alter`: a traced piece, altered as on paper, blended, with its allowance redrawn. */
export function alterCommand(session: Session, finish: (code: ExitCode) => void): Command {
  const command = new Command('alter')
    .description(
      'alter a piece you own, from an outline traced as SVG; without an alteration, show its edges',
    )
    .argument('<svg>', 'the traced piece, with a 50 mm square marked “test square”');
  for (const option of [...readingOptions(), ...alteringOptions(), ...outcomeOptions(), jsonOption()])
    command.addOption(option);
  return command.action(async (file: string, options: AlterOptions) =>
    finish(await alter(session, file, options)),
  );
}

async function alter(session: Session, file: string, options: AlterOptions): Promise<ExitCode> {
  const traced = await readTraced(file, options, options.piece);
  const named = used(withNames(traced.value, options.edges));
  const own = ownPiece(named, toldOf(file, options));
  const before = withDartsMarked(stitched(used(own), options));
  const partner = await readPartner(options);
  const altered = alteration(before, options, partner?.length);
  const answer = used(altered);
  const done = { ...answer, piece: withDartsMarked(withGrainInside(answer.piece)) };
  if (!isSimple(done.piece.edges))
    throw unusable(
      'outline-crosses',
      done.piece.name,
      'Altered so, the outline would cross itself. Alter it by less.',
    );
  const edge = options.seam ?? options.along?.[0] ?? done.piece.edges[0]?.name ?? '';
  const seam = partner && used(walkPartner(before, { piece: done.piece, edge }, partner));
  const garment = garmentOf(done.piece, options);
  const cutLines = cuttingLines(garment, PARALLEL);
  const issues = [
    ...traced.issues,
    ...own.issues,
    ...altered.issues,
    ...checkGarment(garment).issues,
    ...cutReady(garment, cutLines, draftBounds.cutLine),
  ];
  const outcome: AlterOutcome = {
    traced: named,
    before,
    after: done.piece,
    said: done.said,
    deviation: done.deviation,
    seam,
    issues,
  };
  const result = json(alterResult(outcome));
  if (options.out !== undefined) {
    const drawn = pieceSvgs(garment, cutLines, { date: options.date });
    const printed = await pdfFile(garment, cutLines, options);
    await writeFiles(
      options.out,
      new Map<string, string | Uint8Array>([...drawn, ...printed, ['report.json', result]]),
    );
  }
  if (options.json) await session.write(result);
  else {
    await session.write(plain(alterTables(outcome)));
    if (options.out !== undefined)
      session.tell(plain(`wrote the piece and report.json into ${options.out}\n`));
  }
  sayIssues(session, issues);
  return issues.some(({ severity }) => severity === 'error') ? 1 : 0;
}

/** The piece as a PDF, where a paper was named. */
async function pdfFile(
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  { paper, date }: AlterOptions,
): Promise<readonly (readonly [string, Uint8Array])[]> {
  if (paper === undefined) return [];
  const { pages } = used(printPages(garment, cutLines, used(readPaper(paper)), { date }));
  const title = `${garment.name} for ${garment.body}`;
  return [['pattern.pdf', await pdfOf(pages, title, await readFonts())]];
}

/** The value of a result, or the end of the command. */
function used<T>(result: Result<T>): T {
  if (!result.ok) throw new Unusable(result.issues);
  return result.value;
}

/** The piece along its stitching line, where the cutting line was traced. */
const stitched = (piece: Piece, { traced }: AlterOptions): Piece =>
  traced === 'cutting' ? used(takeOffAllowance(piece)) : piece;

async function readTraced(
  file: string,
  { mmPerUnit, corner, traced: line }: AlterOptions,
  piece: string | undefined,
) {
  const read = readOutline(await readTextFile(file, largestDrawing), {
    corner: (corner * Math.PI) / 180,
    line,
    ...(mmPerUnit === undefined ? {} : { mmPerUnit }),
    ...(piece === undefined ? {} : { piece }),
  });
  if (!read.ok) throw new Unusable(read.issues);
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
async function readPartner(options: AlterOptions) {
  if (!options.partner) return undefined;
  const [file, named] = options.partner;
  const slash = named.indexOf('/');
  const [piece, edge] = slash < 0 ? [undefined, named] : [named.slice(0, slash), named.slice(slash + 1)];
  const traced = await readTraced(file, options, piece);
  const has = (names: readonly string[]): readonly string[] =>
    names.filter((wanted) => traced.value.edges.some(({ name }) => name === wanted));
  const told = toldOf(file, options);
  const known = { ...told, folds: has(told.folds), hems: has(told.hems) };
  const drawn = withDartsMarked(stitched(used(ownPiece(traced.value, known)), options));
  const own = dartedEdge(drawn.edges, edge);
  if (own.length === 0) {
    const names = drawn.edges.map(({ name }) => name).join(', ');
    throw unusable('no-such-edge', file, `${file} has no edge called “${edge}”. Its edges are: ${names}.`);
  }
  return { piece: drawn, edge, length: own.reduce((sum, part) => sum + edgeLength(part), 0) };
}

/** One piece alone as a garment, to be checked and drawn like any other. */
const garmentOf = (piece: Piece, { wearer }: AlterOptions): Garment => ({
  name: 'own pattern',
  body: wearer,
  pieces: [piece],
  seams: [],
  joins: [],
  girths: [],
  shapes: [],
  notions: [],
  steps: [],
  issues: noIssues,
});

const noIssues: readonly Issue[] = [];
