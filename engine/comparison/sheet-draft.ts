import { checkGarment } from '../checks/check-garment.ts';
import type { Issue, Result } from '../issue.ts';
import type { Piece } from '../pattern/piece.ts';
import { readEarlierSheet } from '../reading/read-sheet.ts';
import { figuresOf, type KnownDraft } from './known-draft.ts';
import { saidOnSheet } from './taken.ts';

/**
 * A draft as its written sheet shows it, measured from its paths. The sheet may have been written by another version of
 * the program. It does not say the whole styling, nor, where it is old, the measurements.
 *
 * Issues: those of `readSheet`, and `sheet-too-detailed`; beside a draft `edited-since-written` as a warning.
 */
export function sheetDraft(svg: string): Result<KnownDraft> {
  const read = readEarlierSheet(svg);
  if (!read.ok) return read;
  const { garment, cutLines, edited } = read.value;
  const { pieces, notions } = garment;
  const detailed = pieces.find(({ edges }) => curvesIn(edges) > MOST_CURVES);
  if (detailed) return { ok: false, issues: [tooDetailed(detailed.name)] };
  return {
    ok: true,
    value: {
      garment: garment.name,
      body: garment.body,
      figures: { ...figuresOf(checkGarment(garment)), shapesPartly: true },
      sheet: { pieces, cutLines, notions },
      ...(garment.drawnFor && { taken: saidOnSheet(garment.drawnFor) }),
    },
    issues: edited ? [editedSince] : [],
  };
}

/** No piece that was drafted takes so many curves; to compare two takes the square of the time. */
const MOST_CURVES = 2_000;

const curvesIn = (edges: Piece['edges']): number => edges.reduce((sum, { curves }) => sum + curves.length, 0);

const tooDetailed = (piece: string): Issue => ({
  code: 'sheet-too-detailed',
  severity: 'error',
  path: piece,
  message: `${piece} is drawn with more than ${MOST_CURVES} lines and curves: that sheet was not drafted here.`,
});

const editedSince: Issue = {
  code: 'edited-since-written',
  severity: 'warning',
  path: 'file',
  message:
    'What the earlier sheet says of itself was changed since it was written: it is compared as it is now.',
};
