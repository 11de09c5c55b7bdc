import type { Tape } from '../../checks/tape.ts';
import { walkSeam } from '../../checks/walk.ts';
import { COINCIDENCE } from '../../geometry/tolerance.ts';
import type { Garment, Notion } from '../../pattern/garment.ts';
import type { EdgeRef, Seam } from '../../pattern/seam.ts';
import type { SewingStep } from '../../pattern/sewing.ts';

/** What a step needs to know of a seam, measured on the pieces; mm. */
export interface SeamFacts {
  readonly seam: Seam;
  /** The letter that stands on both sides in the drawing. */
  readonly letter: string;
  readonly lengthA: number;
  readonly lengthB: number;
  /** Notches that meet, in the order of the seam. */
  readonly matched: readonly string[];
  /** For a gathered seam, the notches between which side a is drawn up. */
  readonly between: readonly string[];
}

/** What a step needs to know of an edge that is turned; mm. */
export interface TurnFacts {
  readonly edge: EdgeRef;
  readonly length: number;
  readonly depth: number;
}

/** Everything measured that belongs to a step. */
export interface StepFacts {
  readonly pieces: readonly string[];
  /** All edges that are stitched: sewn, turned or caught in. */
  readonly edges: readonly EdgeRef[];
  readonly seams: readonly SeamFacts[];
  /** Widths of the allowances of the seams; one, as a rule. */
  readonly allowances: readonly number[];
  readonly turns: readonly TurnFacts[];
  readonly notions: readonly Notion[];
}

/** Measures what a step is about on the garment's own pieces, so that no figure can differ from them. */
export function stepFacts(garment: Garment, step: SewingStep, tape: Tape): StepFacts {
  const sewn = (step.sews ?? []).flatMap((name) => garment.seams.find((seam) => seam.name === name) ?? []);
  const sides = sewn.flatMap(({ a, b }) => [...a, ...b]);
  const widths = sides.flatMap(({ piece, edge }) => tape.edge(piece, edge)?.allowance ?? []);
  const edges = [...sides, ...(step.turns ?? []), ...(step.catches ?? [])];
  const states = [...(step.needs ?? []), ...(step.brings ?? [])];
  const named = new Set([...edges, ...states].map(({ piece }) => piece));
  return {
    pieces: garment.pieces.flatMap(({ name }) => (named.has(name) ? [name] : [])),
    edges,
    seams: sewn.flatMap((seam, i) => seamFacts(seam, String.fromCharCode(0x61 + (i % 26)), tape) ?? []),
    allowances: [...new Set(widths)],
    turns: (step.turns ?? []).flatMap((ref) => {
      const edge = tape.edge(ref.piece, ref.edge);
      return edge ? [{ edge: ref, length: tape.length(edge), depth: edge.allowance }] : [];
    }),
    notions: garment.notions.filter(({ name }) => step.uses?.includes(name)),
  };
}

function seamFacts(seam: Seam, letter: string, tape: Tape): SeamFacts | undefined {
  const walked = walkSeam(seam, tape);
  if (!walked) return undefined;
  const { lengthA, lengthB } = walked.seam;
  return {
    seam,
    letter,
    lengthA,
    lengthB,
    matched: [...new Set(walked.stretches.slice(1).map(({ from }) => from))],
    between: seam.gatherRatio === 1 ? [] : endNotches(seam.a, tape),
  };
}

/** The notches that stand at the two ends of a side, be they on its own edges or on the edges beyond. */
function endNotches(side: readonly EdgeRef[], tape: Tape): readonly string[] {
  const [first, last] = [side[0], side.at(-1)];
  const at = (ref: EdgeRef | undefined, end: 'start' | 'end'): readonly string[] => {
    const piece = ref && tape.piece(ref.piece);
    const place = piece?.edges.findIndex(({ name }) => name === ref?.edge) ?? -1;
    if (!piece || place < 0) return [];
    const corner = (end === 'end') !== (ref?.reversed ?? false) ? place : place - 1;
    const before = piece.edges.at(corner);
    const after = piece.edges[(corner + 1) % piece.edges.length];
    return piece.notches
      .filter(
        ({ edge, at: along }) =>
          (edge === before?.name && along > tape.length(before) - COINCIDENCE) ||
          (edge === after?.name && along < COINCIDENCE),
      )
      .map(({ name }) => name)
      .slice(0, 1);
  };
  return [...at(first, 'start'), ...at(last, 'end')];
}
