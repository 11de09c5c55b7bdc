import { describe, expect, it } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { sheetSvg } from '../../engine/render/sheet.ts';
import { drafted, shippedBodies, shippedBody } from './drafted.ts';

describe('every garment for every body that ships', () => {
  for (const { name } of garments) {
    for (const body of shippedBodies) {
      it(`${name} for ${body} is all true and draws as it was last looked at`, async () => {
        const evaluation = drafted(name, shippedBody(body));
        expect(evaluation.report.issues.filter((issue) => issue.severity === 'error')).toEqual([]);
        expect(evaluation.report.ok).toBe(true);
        await expect(sheetSvg(evaluation.garment, evaluation.cutLines)).toMatchFileSnapshot(
          `../snapshots/${name}-${body}.svg`,
        );
      });
    }
  }
});
