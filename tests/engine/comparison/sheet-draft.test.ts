import { describe, expect, test } from 'vitest';
import { sheetDraft } from '../../../engine/comparison/sheet-draft.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';

const { garment, cutLines } = drafted('skirt', shippedBody('leading-lady'));
const sheet = sheetSvg(garment, cutLines);

/** The sheet with a line of its first piece drawn as so many. */
const divided = (count: number): string =>
  sheet.replace(/(class="stitch"[^>]*d="M[^"]*?)L([\d.]+) ([\d.]+)"/, (_, before: string, x, y) => {
    const [fromX = 0, fromY = 0] = (before.match(/[\d.]+/g) ?? []).slice(-2).map(Number);
    const steps = Array.from({ length: count }, (_, i) => {
      const share = (i + 1) / count;
      const at = (from: number, to: number): string => (from + share * (to - from)).toFixed(6);
      return `L${at(fromX, Number(x))} ${at(fromY, Number(y))}`;
    });
    return `${before}${steps.join('')}"`;
  });

describe('an earlier sheet', () => {
  test('is compared by its lines', () => {
    expect(sheetDraft(sheet).ok).toBe(true);
    expect(sheetDraft(divided(50)).ok).toBe(true);
  });

  test('of more lines a piece than any draft has is refused by name', () => {
    const read = sheetDraft(divided(2100));
    expect(read.ok).toBe(false);
    expect(read.issues).toEqual([
      expect.objectContaining({ code: 'sheet-too-detailed', path: garment.pieces[0]?.name }),
    ]);
  });
});
