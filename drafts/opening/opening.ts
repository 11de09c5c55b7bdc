import { edgeEnd, edgeLength, edgeStart } from '../../engine/geometry/edge.ts';
import { type ConstructionLog, figure } from '../../engine/pattern/construction-log.ts';
import type { EdgeRef, Seam } from '../../engine/pattern/garment.ts';
import type { Notch, PieceEdge } from '../../engine/pattern/piece.ts';
import type { Parts } from '../draw-garment.ts';
import { liningOf } from '../lining/lining-pieces.ts';
import type { MakingStyling } from '../making-choices.ts';
import { edgeNamed, pieceNamed } from '../piece-edges.ts';
import { liningCentreBack } from '../skirt/lining.ts';
import type { OpenedStyling, OpeningStyling } from './choices.ts';
import { openingRules as rules } from './rules.ts';
import { openingSewing } from './sewing.ts';
import { stayNotion } from './waist-stay.ts';
import { zipNotions } from './zip-notions.ts';

/** The edges an opening runs along: on the bodice, and going on below the waist. */
interface OpeningEdges {
  readonly bodice: EdgeRef;
  readonly skirt: EdgeRef;
  /** What of the bodice's edge lies above the zip, mm. */
  readonly closedAbove: number;
}

const edgesOf: Readonly<Record<OpeningStyling['opening'], OpeningEdges>> = {
  back: {
    bodice: { piece: 'centre back', edge: 'centre back' },
    skirt: { piece: 'skirt centre back', edge: 'centre back' },
    closedAbove: rules.sliderBelow.value,
  },
  side: {
    bodice: { piece: 'side front', edge: 'side' },
    skirt: { piece: 'skirt side front', edge: 'side' },
    closedAbove: rules.belowUnderarm.value,
  },
};

/** The left and right centre backs, sewn to each other from the hem to the neckline. */
const centreBackSeam: Seam = {
  name: 'centre back',
  a: [
    { piece: 'skirt centre back', edge: 'centre back' },
    { piece: 'centre back', edge: 'centre back' },
  ],
  b: [
    { piece: 'skirt centre back', edge: 'centre back' },
    { piece: 'centre back', edge: 'centre back' },
  ],
  ease: 0,
  gatherRatio: 1,
};

/** A mark of the zip on an edge, so far below its upper end (mm). */
const zipMark = (name: string, edge: PieceEdge, below: number): Notch => ({
  name,
  edge: edge.name,
  at: edgeStart(edge).y < edgeEnd(edge).y ? below : edgeLength(edge) - below,
  mark: 'level',
});

/**
 * Opens a dress: the longest zip in stock that ends high enough, notches where it begins and ends, a hook and eye above it, and
 * the centre back seam that is sewn below it or, where the dress opens at the side, from hem to neckline.
 */
export function openDress(dress: Parts, styling: OpenedStyling & MakingStyling, log: ConstructionLog): Parts {
  const { bodice, skirt, closedAbove } = edgesOf[styling.opening];
  const lengthOf = ({ piece, edge }: EdgeRef): number =>
    edgeLength(edgeNamed(pieceNamed(dress.pieces, piece), edge));
  const onBodice = lengthOf(bodice) - closedAbove;
  const step = rules.stockStep.value;
  const zip = log.mm(
    'Zip',
    `the longest stock length up to ${figure(onBodice)} on the bodice + ${rules.belowWaist.value} below the waist`,
    step * Math.floor((onBodice + rules.belowWaist.value) / step),
    rules.belowWaist,
  );
  const below = log.mm(
    'Zip ends below the waist',
    `${zip} - ${figure(onBodice)}`,
    zip - onBodice,
    'construction',
  );
  const waist = dress.girths.find(({ level }) => level === 'waist');
  const lined = styling.skirtLining === 'lined';
  const panels = styling.opening === 'back' ? ['centre back'] : ['side front', 'side back'];
  const gores = panels.map((panel) => `skirt ${panel}`);
  const opened = lined ? [...gores, ...gores.map(liningOf)] : gores;
  const marked = dress.pieces.map((piece) => {
    const marks = [
      ...(panels.includes(piece.name)
        ? [zipMark('top of the zip', edgeNamed(piece, bodice.edge), closedAbove)]
        : []),
      ...(opened.includes(piece.name)
        ? [zipMark('end of the zip', edgeNamed(piece, skirt.edge), below)]
        : []),
    ];
    return marks.length > 0 ? { ...piece, notches: [...piece.notches, ...marks] } : piece;
  });
  return {
    ...dress,
    pieces: marked,
    seams: [...dress.seams, centreBackSeam, ...(lined ? [liningCentreBack] : [])],
    notions: [
      ...dress.notions,
      ...zipNotions(styling, zip),
      ...(waist ? stayNotion(styling, waist, log) : []),
    ],
    sewing: openingSewing(dress.sewing ?? {}, styling, below),
  };
}
