import { sewingFaults } from '../../checks/sewing.ts';
import { tapeFor } from '../../checks/tape.ts';
import type { Edge } from '../../geometry/curve.ts';
import type { Garment } from '../../pattern/garment.ts';
import { withLengthsIn } from '../../text/with-lengths-in.ts';
import type { Picture } from '../booklet/picture.ts';
import { finishedPieces } from '../finish.ts';
import type { ReadAs } from '../print-options.ts';
import { cutList, type ListRow, notionList, openEdges } from './lists.ts';
import { readyWords } from './ready.ts';
import { sourcesOf, sourceWords } from './sources.ts';
import { stepFacts } from './step-facts.ts';
import { stepPicture } from './step-picture.ts';
import { type StepWords, stepWords } from './step-words.ts';
import type { ToBuy } from './to-buy.ts';

/** Everything that stands on a sewing sheet, whatever it is printed as. */
export interface SheetContent {
  readonly title: string;
  readonly lead: string;
  /** Why nobody should sew by this order; none when it is proved. */
  readonly faults: readonly string[];
  /** The finished garment as it is worn, from several sides; none where that is not known. */
  readonly finished: readonly Picture[];
  readonly cut: readonly ListRow[];
  readonly notions: readonly ListRow[];
  /** What cloth to buy by width; none where it is not known. */
  readonly cloth: ToBuy['cloth'] | undefined;
  readonly steps: readonly ShownStep[];
  /** Edges that are sewn to nothing. */
  readonly open: readonly string[];
  readonly notes: readonly string[];
}

export interface ShownStep {
  readonly words: StepWords;
  readonly picture: Picture | undefined;
  /** The drawing takes the whole width, below the words. */
  readonly wide: boolean;
}

/** Width of the words beside a drawing, and the room for a drawing beside them or below; mm. */
export const wordsWidth = 98;
const beside = { width: 78, height: 58 };
const below = { width: 178, height: 58 };

/** More pieces than this do not fit beside the words. */
const mostBeside = 5;

/**
 * What the sheet of a garment says and shows. `cutLines` holds the cutting lines by piece name; `toBuy` what to
 * buy, where that was found; `finished` the garment as it is worn.
 */
export function sheetContent(
  garment: Garment,
  cutLines: ReadonlyMap<string, Edge>,
  { date, units = 'mm' }: ReadAs,
  toBuy?: ToBuy,
  finished: readonly Picture[] = [],
): SheetContent {
  const { sewing = [] } = garment;
  const tape = tapeFor(garment);
  const sources = sourcesOf(sewing);
  const pieces = finishedPieces(garment, cutLines, 'slit');
  const folded = piecesFolded(garment);
  return {
    title: `Sewing the ${garment.name} for ${garment.body}`,
    lead: [date, lead].filter(Boolean).join('. '),
    faults: sewingFaults(garment, tape).map(({ message }) => withLengthsIn(message, units)),
    finished,
    cut: cutList(garment),
    notions: notionList(garment, units, toBuy),
    cloth: toBuy?.cloth,
    steps: sewing.map((step, i) => {
      const facts = stepFacts(garment, step, tape);
      const wide = facts.pieces.length > mostBeside;
      return {
        words: stepWords(i + 1, step, facts, readyWords(sewing, i), sources, units),
        picture: stepPicture(step, facts, pieces, folded, wide ? below : beside),
        wide,
      };
    }),
    open: openEdges(garment),
    notes: [classes, ...(toBuy ? [toBuy.threadNote] : []), withLengthsIn(sourceWords(sources), units)],
  };
}

/** What stands under the picture of the finished garment. */
export const finishedSays =
  'The finished garment from the front and the back, as it hangs on a form that has her measurements.';

/** What stands above faults, and above edges that are left open. */
export const faultsSay = 'Do not sew by this sheet yet.';
export const openSays =
  'These edges have an allowance and are sewn to nothing here: finish them as you like best.';

const lead =
  'All figures are for this one body, measured on its own pieces. In the drawings the lines that are worked on are heavy, and a letter stands on both sides of a seam.';

const classes =
  'Stitch types are numbered as in ISO 4915, seam classes as in ISO 4916. “Common practice, no source” marks what every workroom does and no publication was read for.';

/** The pieces that are folded double on an edge, and stay so. */
const piecesFolded = ({ sewing = [] }: Garment): ReadonlySet<string> =>
  new Set(
    sewing.flatMap(({ brings = [] }) => brings.flatMap(({ is, piece }) => (is === 'folded' ? piece : []))),
  );
