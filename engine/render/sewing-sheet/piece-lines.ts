import { placeOfRow } from '../../checks/sewing/complete.ts';
import type { Curve } from '../../geometry/curve.ts';
import { moved } from '../../geometry/point.ts';
import { mirroredIn, type Transform, transformedCurve } from '../../geometry/transform.ts';
import { heading, scaled } from '../../geometry/vector.ts';
import type { Mark, Piece } from '../../pattern/piece.ts';
import type { SewingStep } from '../../pattern/sewing.ts';
import type { PictureLine } from '../booklet/picture.ts';
import type { FinishedPiece } from '../finished-piece.ts';
import type { StepFacts } from './step-facts.ts';

/** The lines of a piece as a step draws it, and how its other half is mirrored where it is opened out. */
export interface PieceLines {
  readonly lines: readonly PictureLine[];
  readonly opened: Transform | undefined;
}

/** The lines of a piece, full size: what the step works on heavy, all else light; both halves where it is opened. */
export function pieceLines(
  step: SewingStep,
  facts: StepFacts,
  finished: FinishedPiece,
  folded: ReadonlySet<string>,
): PieceLines {
  const half = halfLines(step, facts, finished);
  const opened = folded.has(finished.piece.name) ? undefined : mirrorOf(finished.piece);
  if (!opened) return { lines: half, opened };
  const other = half.map((line) => ({
    ...line,
    curves: line.curves.map((curve) => transformedCurve(curve, opened)),
  }));
  return { lines: [...half, ...other], opened };
}

/** The mirror in the edge that lies on a fold of the cloth. */
function mirrorOf({ edges }: Piece): Transform | undefined {
  const fold = edges.find(({ turn }) => turn === 'fold');
  const from = fold?.curves[0]?.from;
  const to = fold?.curves.at(-1)?.to;
  return from && to ? mirroredIn(from, to) : undefined;
}

function halfLines(
  step: SewingStep,
  facts: StepFacts,
  { piece, cut, notches }: FinishedPiece,
): readonly PictureLine[] {
  const isHere = ({ piece: name }: { readonly piece: string }): boolean => name === piece.name;
  const states = (step.brings ?? []).filter(isHere);
  const brings = new Set(states.map(({ is }) => is));
  const places = new Set(states.flatMap(({ is, at }) => (is === 'buttonholes made' ? [] : (at ?? []))));
  const edges = new Set(facts.edges.filter(isHere).map(({ edge }) => edge));
  const rows = new Set(
    piece.lines.flatMap(({ kind, name }) => (kind === 'gathering' ? placeOfRow(name) : [])),
  );
  const marked = brings.has('marked');
  const line = (heavy: boolean, light: PictureLine['weight'], curves: readonly Curve[]): PictureLine => ({
    weight: heavy ? 'heavy' : light,
    curves,
  });
  return [
    { ...line(brings.has('cut'), 'cut', cut), closed: true },
    ...piece.edges.map(({ name, curves }) =>
      line(edges.has(name) || (places.has(name) && !rows.has(name)), 'stitch', curves),
    ),
    ...piece.lines
      .filter(({ kind }) => kind !== 'level' && kind !== 'slash')
      .map(({ name, curves }) =>
        line(marked || places.has(name) || places.has(placeOfRow(name)), 'inside', curves),
      ),
    ...notches.flatMap(({ strokes }) => strokes.map((curves) => line(marked, 'notch', curves))),
    ...piece.marks
      .filter(({ kind }) => kind === 'buttonhole')
      .map((mark) => line(marked || brings.has('buttonholes made'), 'notch', [slit(mark)])),
  ];
}

function slit({ at, angle, length }: Mark): Curve {
  const half = scaled(heading(angle), length / 2);
  return { kind: 'line', from: moved(at, scaled(half, -1)), to: moved(at, half) };
}
