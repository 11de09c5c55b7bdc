import type { NotchStrokes } from '../finishing/notches.ts';
import type { Rectangle } from '../finishing/rectangle.ts';
import type { Edge } from '../geometry/curve.ts';
import type { Issue, Result } from '../issue.ts';
import type { IssueCode } from '../issue-codes/issue-codes.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import { isAsSealed, type Metadata, metadataSchema } from '../render/metadata.ts';
import type { Unit } from '../text/units.ts';
import { NamedLines } from './drawn.ts';
import { drawnOtherwise, type KnownStyle, ownStyle, styleOfAnyVersion } from './drawn-otherwise.ts';
import { readLabels } from './read-labels.ts';
import { type FoundElement, readMarkup } from './read-markup.ts';
import { readPiece } from './read-piece.ts';
import { readScale } from './read-scale.ts';
import { squareFaults } from './square-faults.ts';

/** A sheet as it stands in the file: a garment measured from its paths, and the cutting line of each piece. */
export interface Sheet {
  readonly garment: Garment;
  /** What it says of itself, as it stands there. */
  readonly said: Metadata;
  readonly cutLines: ReadonlyMap<string, Edge>;
  /** The strokes of the notches of each piece. */
  readonly notches: ReadonlyMap<string, readonly NotchStrokes[]>;
  /** The room each line of a label takes up. */
  readonly labels: readonly Rectangle[];
  /** Whether what it says of itself was changed since it was written. */
  readonly edited: boolean;
  /** The unit in which its lengths are told to whom it was written for. */
  readonly units: Unit;
  /** How large it is on paper, mm. */
  readonly page: { readonly width: number; readonly height: number };
  /** What is wrong with its test squares. */
  readonly squares: readonly Issue[];
}

/**
 * Reads a written sheet back. Every line is taken from its path, in millimetres of paper; only what no path can
 * say (which edges are sewn together, allowances asked for, ranks) comes from the metadata.
 *
 * Issues, all at once: `not-svg`, `size-unknown`, `stretched`, `metadata-missing`, `metadata-damaged`,
 * `one-piece-only`, `path-missing`, `path-twice`, `path-open`, `path-unknown`, `path-moved`,
 * `path-unreadable`, `path-otherwise`, `drawn-otherwise`.
 */
export const readSheet = (svg: string): Result<Sheet> => readStyled(svg, ownStyle);

/** The same of a sheet that another version of the program may have written, whose lines look otherwise. */
export const readEarlierSheet = (svg: string): Result<Sheet> => readStyled(svg, styleOfAnyVersion);

function readStyled(svg: string, isKnown: KnownStyle): Result<Sheet> {
  const markup = readMarkup(svg);
  if (!markup.ok) return markup;
  const [root, ...elements] = markup.value.elements;
  const scale = readScale(root?.attributes ?? {});
  const metadata = readMetadata(elements);
  const otherwise = drawnOtherwise(markup.value, isKnown);
  if (!scale.ok || !metadata.ok)
    return { ok: false, issues: [...scale.issues, ...metadata.issues, ...otherwise] };
  const drawn = new NamedLines(elements, scale.value);
  const { said, edited } = metadata.value;
  const read = said.pieces.map((piece) => readPiece(piece, drawn));
  drawn.refuseUnknown();
  const issues = [...otherwise, ...drawn.issues];
  if (issues.length > 0) return { ok: false, issues };
  const pieces = read.map(({ piece }) => piece);
  const cutLines = new Map(read.map(({ piece, cut }) => [piece.name, { name: 'cutting line', curves: cut }]));
  const labels = readLabels(elements, scale.value);
  const notches = new Map(read.map(({ piece, notches: strokes }) => [piece.name, strokes]));
  const garment = garmentOf(said, pieces);
  return {
    ok: true,
    value: {
      garment,
      said,
      cutLines,
      notches,
      labels,
      edited,
      units: said.units ?? 'mm',
      page: pageOf(root, scale.value),
      squares: squareFaults(elements, scale.value),
    },
    issues: [],
  };
}

/** The size of the page that a drawing fills, mm. */
function pageOf(root: FoundElement | undefined, scale: number): Sheet['page'] {
  const [, , width = 0, height = 0] = (root?.attributes.viewBox ?? '')
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  return { width: width * scale, height: height * scale };
}

const garmentOf = (said: Metadata, pieces: readonly Piece[]): Garment => ({
  name: said.garment,
  body: said.body,
  ...(said.wearer && { wearer: said.wearer }),
  ...(said.choices && { choices: said.choices }),
  ...(said.drawnFor && { drawnFor: said.drawnFor }),
  pieces,
  seams: said.seams,
  joins: said.joins,
  girths: said.girths,
  shapes: said.shapes,
  notions: said.notions,
  steps: [],
  issues: [],
});

function readMetadata(
  elements: readonly FoundElement[],
): Result<{ readonly said: Metadata; readonly edited: boolean }> {
  const text = elements.find((element) => element.name === 'metadata')?.text;
  if (!text) return refuse('metadata-missing', 'The drawing does not say which edges are sewn together.');
  const damaged = 'What the drawing says of its pieces and seams is damaged';
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return refuse('metadata-damaged', `${damaged}.`);
  }
  const said = metadataSchema.safeParse(data);
  if (!said.success) {
    const at = said.error.issues[0]?.path.join('/') ?? '';
    return refuse('metadata-damaged', at === '' ? `${damaged}.` : `${damaged} at “${at.slice(0, 80)}”.`);
  }
  if (said.data.holds === 'piece')
    return refuse(
      'one-piece-only',
      'This file holds one piece without its neighbours. Walk sheet.svg instead.',
    );
  const edited = !isAsSealed(data as object);
  return { ok: true, value: { said: said.data, edited }, issues: [] };
}

const refuse = (
  code: IssueCode,
  message: string,
): { readonly ok: false; readonly issues: readonly Issue[] } => ({
  ok: false,
  issues: [{ code, severity: 'error', path: 'file', message }],
});
