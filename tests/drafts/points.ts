import { garments } from '../../drafts/garments.ts';
import { type Evaluation, evaluate } from '../../engine/evaluate.ts';
import { edgeLength, pointAlong } from '../../engine/geometry/edge.ts';
import type { Point } from '../../engine/geometry/point.ts';
import type { Result } from '../../engine/issue.ts';

/** A garment evaluated for body data, whatever comes of it. */
export function evaluated(garment: string, body: unknown, styling?: unknown): Result<Evaluation> {
  const draft = garments.find((candidate) => candidate.name === garment);
  if (!draft) throw new Error(`no garment ${garment}`);
  return evaluate(draft, body, styling);
}

/** Places all along every stitching line, in an order that depends on the draft alone. */
export const drawnPoints = ({ garment }: Evaluation): readonly Point[] =>
  garment.pieces.flatMap((piece) =>
    piece.edges.flatMap((edge) => {
      const length = edgeLength(edge);
      return [0, 0.25, 0.5, 0.75].map((share) => pointAlong(edge, share * length).point);
    }),
  );
