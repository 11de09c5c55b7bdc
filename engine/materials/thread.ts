import { type Tape, tapeFor } from '../checks/tape.ts';
import { edgeLength } from '../geometry/edge.ts';
import type { SeamFinish } from '../pattern/finishes.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import type { Seam } from '../pattern/seam.ts';
import type { Condition, SewingStep } from '../pattern/sewing.ts';
import type { StitchType } from '../pattern/stitches.ts';

/** How far something is stitched in one type of stitch, and the thread that takes; mm. */
export interface ThreadNeed {
  readonly stitch: StitchType;
  readonly stitched: number;
  /** All threads of the stitch together, what is lost at ends counted. */
  readonly thread: number;
}

/**
 * A usual stitch through two layers of dress cloth: its length, and how thick the layers are together; zigzag to overcast with, its
 * advance and width; overedge, its length and how far it reaches in from the edge; by hand, its length; mm (common practice, no source).
 */
const usual = {
  thickness: 0.6,
  straight: { stitch: 2.5 },
  zigzag: { stitch: 2, width: 5 },
  overedge: { stitch: 2.5, bite: 5 },
  hand: { stitch: 5, lost: 1 / 3 },
} as const;

/**
 * Thread in a balanced lockstitch for each length of seam: either thread runs once along each stitch and once through the
 * cloth, half of it down and half of it up again. Geometry, the threads drawn tight and without thickness of their own.
 */
export const lockstitchThread = (stitch: number, thickness: number): number => 2 * (1 + thickness / stitch);

/** The same of zigzag, each of whose stitches runs aslant over its width while the cloth moves on by its advance. */
export const zigzagThread = (stitch: number, width: number, thickness: number): number =>
  (2 * (Math.hypot(stitch, width) + thickness)) / stitch;

/**
 * Thread in a three-thread overedge for each length of edge, all threads together: the needle's runs along each stitch and twice
 * through the cloth; either looper's goes from the needle's line out to the edge and back to the next stitch, and one of
 * them round the edge each way. Geometry, the threads drawn tight.
 */
export const overedgeThread = (stitch: number, bite: number, thickness: number): number =>
  (stitch + 2 * thickness + 4 * Math.hypot(bite, stitch / 2) + 2 * thickness) / stitch;

/** Thread in a running stitch for each length of seam: along each stitch and once through the cloth. Geometry. */
export const runningThread = (stitch: number, thickness: number): number => 1 + thickness / stitch;

/**
 * Thread for each length of seam, all threads together, each by the geometry of its stitch; by hand, where every length of thread
 * begins with a knot and ends before it is used up, a third of it is lost (common practice, no source).
 */
export const threadFactors: Readonly<Record<StitchType, number>> = {
  '200': runningThread(usual.hand.stitch, usual.thickness) / (1 - usual.hand.lost),
  '301': lockstitchThread(usual.straight.stitch, usual.thickness),
  '304': zigzagThread(usual.zigzag.stitch, usual.zigzag.width, usual.thickness),
  '504': overedgeThread(usual.overedge.stitch, usual.overedge.bite, usual.thickness),
};

/** What is lost at ends, in bobbins and by unpicking, as a share of what is sewn (common practice, no source). */
export const threadLost = 0.25;

/** Where the factors come from, in the words of a list. */
export const threadSource =
  'each stitch by its geometry (lockstitch: 2.5 mm long through 0.6 mm); a quarter more for ends, common practice, no source';

/** In which stitch raw edges are overcast on a machine that has no overedge stitch. */
const overcastStitch: StitchType = '304';

/** The thread that a garment takes by its sewing order, for each type of stitch; nothing without an order. */
export function threadNeeds(garment: Garment): readonly ThreadNeed[] {
  const tape = tapeFor(garment);
  const stitched = new Map<StitchType, number>();
  const add = (stitch: StitchType, length: number): void => {
    if (length > 0) stitched.set(stitch, (stitched.get(stitch) ?? 0) + length);
  };
  for (const step of garment.sewing ?? []) {
    const seams = garment.seams.filter(({ name }) => step.sews?.includes(name));
    const sewn = seams.reduce((sum, seam) => sum + seamLength(seam, tape), 0);
    const turned = (step.turns ?? []).reduce((sum, ref) => sum + edgesLength([ref], tape), 0);
    if (step.stitch) add(step.stitch, sewn + turned + placesLength(step, garment));
    if (step.finish) {
      const { passes, stitch } = finishing(step.finish);
      add(stitch, passes * sewn + Math.min(passes, 1) * turned);
    }
  }
  return Array.from(stitched, ([stitch, length]) => ({
    stitch,
    stitched: length,
    thread: length * threadFactors[stitch] * (1 + threadLost),
  })).toSorted((a, b) => a.stitch.localeCompare(b.stitch));
}

/** How often a seam is stitched along to finish its raw edges, and how. */
function finishing(finish: SeamFinish): { readonly passes: number; readonly stitch: StitchType } {
  switch (finish) {
    case 'overcast':
      return { passes: 2, stitch: overcastStitch };
    case 'overcast together':
      return { passes: 1, stitch: overcastStitch };
    // A binding is sewn on once and stitched down once.
    case 'bound':
      return { passes: 4, stitch: '301' };
    case 'bound together':
      return { passes: 2, stitch: '301' };
    case 'pinked':
    case 'pinked together':
    case 'raw':
    case 'enclosed':
    case 'graded':
    case 'turned':
    case 'felled':
      return { passes: 0, stitch: '301' };
  }
}

/** How many of a piece's edges there are once it is cut: two of each where it is drawn as a half. */
const timesCut = ({ cut, edges }: Piece): number =>
  cut.filter(({ cloth }) => cloth !== 'interfacing').reduce((sum, { count }) => sum + count, 0) *
  (edges.some(({ turn }) => turn === 'fold') ? 2 : 1);

/** Lengths of some edges, each as often as it is there; mm. */
const edgesLength = (refs: Seam['a'], tape: Tape): number =>
  refs.reduce((sum, ref) => {
    const [piece, edge] = [tape.piece(ref.piece), tape.edge(ref.piece, ref.edge)];
    return piece && edge ? sum + timesCut(piece) * tape.length(edge) : sum;
  }, 0);

/**
 * How far a seam is stitched on all pieces as they are cut; mm. Of a seam that is gathered it is the shorter side; where a
 * piece is sewn to its own like, two edges make one seam.
 */
function seamLength({ a, b }: Seam, tape: Tape): number {
  const names = (side: Seam['a']): string => side.map(({ piece, edge }) => `${piece}\n${edge}`).join('\n');
  const likes = names(a) === names(b) || names(a) === names(b.toReversed());
  return likes ? edgesLength(a, tape) / 2 : Math.min(edgesLength(a, tape), edgesLength(b, tape));
}

/** What is stitched where a piece is brought to something, by how often the stitching runs there. */
const stitchedTo: Partial<Readonly<Record<Condition, number>>> = {
  'stay-stitched': 1,
  'rows stitched': 2,
  'casing stitched': 1,
};

/** What a step stitches on single pieces along an edge or a line; mm. */
const placesLength = ({ brings = [], sews = [], turns = [] }: SewingStep, { pieces }: Garment): number =>
  sews.length + turns.length > 0
    ? 0
    : brings.reduce((sum, { piece: name, is, at }) => {
        const piece = pieces.find((each) => each.name === name);
        const place = [...(piece?.edges ?? []), ...(piece?.lines ?? [])].find((each) => each.name === at);
        if (!piece || !place) return sum;
        return sum + (stitchedTo[is] ?? 0) * timesCut(piece) * edgeLength(place);
      }, 0);
