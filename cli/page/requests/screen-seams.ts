import {
  type EdgeRef,
  fixed,
  type Garment,
  lengthIn,
  type Seam,
  tapeFor,
  type Unit,
  walkSeam,
} from '../../../drafts/index.ts';
import type { ScreenSeam, SeamSide } from '../draft-parts.ts';

/** The seams of a garment, laid out to be walked on a screen. */
export function screenSeams(garment: Garment, units: Unit): readonly ScreenSeam[] {
  const tape = tapeFor(garment);
  const sideOf = (refs: readonly EdgeRef[], length: number): SeamSide => ({
    edges: refs.map((ref) => {
      const edge = tape.edge(ref.piece, ref.edge);
      return { ...ref, length: edge ? tape.length(edge) : 0 };
    }),
    length: lengthIn(length, units),
  });
  return garment.seams.flatMap((seam) => {
    const walked = walkSeam(seam, tape);
    if (!walked) return [];
    const { lengthA, lengthB } = walked.seam;
    const stops = [{ a: 0, b: 0 }];
    for (const stretch of walked.stretches) {
      const last = stops.at(-1) ?? { a: 0, b: 0 };
      stops.push({ a: last.a + stretch.lengthA, b: last.b + stretch.lengthB });
    }
    return [
      {
        name: seam.name,
        a: sideOf(seam.a, lengthA),
        b: sideOf(seam.b, lengthB),
        stops,
        gatherRatio: seam.gatherRatio,
        says: says(seam, units),
      },
    ];
  });
}

/** What becomes of the difference of its sides. */
function says({ gatherRatio, ease }: Seam, units: Unit): string {
  if (gatherRatio !== 1) return `gathered ${fixed(gatherRatio, 2)} to 1`;
  if (ease > 0) return `${lengthIn(ease, units)} eased in`;
  if (ease < 0) return `held ${lengthIn(-ease, units)} short`;
  return 'sewn edge to edge';
}
