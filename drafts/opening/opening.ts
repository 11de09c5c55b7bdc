import { edgeEnd, edgeLength, edgeStart } from '../../engine/geometry/edge.ts';
import type { Notch, PieceEdge } from '../../engine/pattern/piece.ts';
import type { Rule } from '../../engine/pattern/rule.ts';
import { liningOf } from '../lining/lining-pieces.ts';
import type { Parts } from '../parts.ts';
import { edgeNamed, pieceNamed } from '../piece-edges.ts';
import { edge, plainSeam } from '../seams.ts';
import { liningCentreBack } from '../skirt/lining.ts';
import type { OpenedTable, OpeningStyling } from './choices.ts';
import { markZip, type OpenedEdges } from './mark-zip.ts';
import { openingRules as rules } from './rules.ts';
import { openingSewing } from './sewing.ts';
import { stayNotion } from './waist-stay.ts';
import { zipNotions } from './zip-notions.ts';

interface OpeningEdges extends OpenedEdges {
  /** What of the bodice's edge lies above the zip. */
  readonly closedAbove: Rule;
}

const edgesOf: Readonly<Record<OpeningStyling['opening'], OpeningEdges>> = {
  back: {
    bodice: edge('centre back', 'centre back'),
    skirt: edge('skirt centre back', 'centre back'),
    closedAbove: rules.sliderBelow,
  },
  side: {
    bodice: edge('side front', 'side'),
    skirt: edge('skirt side front', 'side'),
    closedAbove: rules.belowUnderarm,
  },
};

const wholeCentreBack = [edge('skirt centre back', 'centre back'), edge('centre back', 'centre back')];

/** The left and right centre backs, sewn to each other from the hem to the neckline. */
const centreBackSeam = plainSeam('centre back', wholeCentreBack, wholeCentreBack);

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
export function openDress(table: OpenedTable, dress: Parts): Parts {
  const { mm, measured, heading, size, styling } = table;
  heading('The opening');
  const { bodice, skirt, closedAbove } = edgesOf[styling.opening];
  const edgeOf = measured(
    'Edge of the bodice that opens',
    `the ${bodice.edge} edge of the ${bodice.piece}`,
    edgeLength(edgeNamed(pieceNamed(dress.pieces, bodice.piece), bodice.edge)),
    size.backNeckPointToWaist,
  );
  const onBodice = mm`Zip on the bodice: ${edgeOf} - closed above ${closedAbove}`;
  const zip = mm`Zip: ${rules.stockStep} x whole part of ((${onBodice} + ${rules.belowWaist}) / ${rules.stockStep}); the longest stock length that ends high enough`;
  const below = mm`Zip ends below the waist: ${zip} - ${onBodice}`;
  markZip(table, dress, { bodice, skirt }, { edgeOf, closedAbove, onBodice, zip, below });
  const waist = dress.girths.find(({ level }) => level === 'waist');
  const lined = styling.skirtLining === 'lined';
  const panels = styling.opening === 'back' ? ['centre back'] : ['side front', 'side back'];
  const gores = panels.map((panel) => `skirt ${panel}`);
  const opened = lined ? [...gores, ...gores.map(liningOf)] : gores;
  const marked = dress.pieces.map((piece) => {
    const marks = [
      ...(panels.includes(piece.name)
        ? [zipMark('top of the zip', edgeNamed(piece, bodice.edge), closedAbove.value)]
        : []),
      ...(opened.includes(piece.name)
        ? [zipMark('end of the zip', edgeNamed(piece, skirt.edge), below.value)]
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
      ...zipNotions(styling, zip.value),
      ...(waist ? stayNotion(table, waist) : []),
    ],
    sewing: openingSewing(dress.sewing ?? {}, styling, below.value),
  };
}
