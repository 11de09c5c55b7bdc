import { describe, expect, it } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { trialAllowance } from '../../engine/body/fitting.ts';
import { sewingFaults } from '../../engine/checks/sewing.ts';
import { tapeFor } from '../../engine/checks/tape.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import type { SewingStep } from '../../engine/pattern/sewing.ts';
import { sewingSheet } from '../../engine/render/sewing-sheet/sewing-sheet.ts';
import { drafted, edgeOf, pieceOf, shippedBody } from './drafted.ts';

const lady = shippedBody('leading-lady');
const dress = drafted('dress', lady);
const sideways = drafted('dress', lady, { opening: 'side', skirtLining: 'lined' });

const stepsOf = ({ garment }: Evaluation): readonly SewingStep[] => garment.sewing ?? [];

/** The step that sews a seam. */
const sewing = (evaluation: Evaluation, seam: string): SewingStep => {
  const step = stepsOf(evaluation).find(({ sews }) => sews?.includes(seam));
  if (!step) throw new Error(`no step sews ${seam}`);
  return step;
};

const notion = ({ garment }: Evaluation, name: string) => garment.notions.find((each) => each.name === name);

const faultsOf = ({ garment }: Evaluation, changed: readonly SewingStep[]) =>
  sewingFaults({ ...garment, sewing: changed }, tapeFor(garment)).map(({ code, path }) => `${code}: ${path}`);

describe('the finish of raw edges', () => {
  it('is said by every step that sews or turns any, in every garment', () => {
    for (const { name } of garments)
      for (const step of stepsOf(drafted(name, lady)))
        if ((step.sews ?? step.turns ?? []).length > 0) expect(step.finish, step.title).toBeDefined();
  });

  it('that is not said fails the sewing order', () => {
    const silent = stepsOf(dress).map((step): SewingStep => {
      const { finish: _, ...rest } = step;
      return step.title === 'Sew the side seams' ? rest : step;
    });
    expect(faultsOf(dress, silent)).toContain('sewing-no-finish: Sew the side seams');
  });

  it('is none of her business under a lining, and as she chooses where nothing covers it', () => {
    for (const seam of [
      'side',
      'back princess',
      'front princess, lower',
      'under-bust, gathered',
      'waist, side front',
    ])
      expect(sewing(dress, seam).finish, seam).toBe('enclosed');
    const bound = drafted('dress', lady, { inside: 'faced', seamFinish: 'bound' });
    expect(sewing(bound, 'side').finish).toBe('bound');
    expect(sewing(bound, 'waist, side front').finish).toBe('bound together');
    expect(sewing(bound, 'skirt, side').finish).toBe('bound');
    expect(sewing(drafted('dress', lady, { seamFinish: 'pinked' }), 'skirt, side').finish).toBe('pinked');
  });

  it('stands on the sewing page beside stitch and seam class', () => {
    const { garment, cutLines } = dress;
    expect(sewingSheet(garment, cutLines)).toContain(
      'seam class 1, superimposed; finish: each edge overcast; allowance',
    );
  });
});

describe('what is needed beside the cloth', () => {
  it('has the zip with its kind and length, and interfacing as long', () => {
    const lapped = drafted('dress', lady, { zipKind: 'lapped', opening: 'side' });
    expect(notion(lapped, 'zip')?.note).toBe('lapped, set into the left side seam');
    expect(notion(dress, 'zip')?.note).toBe('centred, set into the centre back seam');
    expect(notion(dress, 'interfacing for the zip')).toMatchObject({
      count: 2,
      length: notion(dress, 'zip')?.length,
    });
  });

  it('has stay tape as long as the edges that it stays', () => {
    expect(notion(dress, 'stay tape for the back neckline')?.length).toBeCloseTo(
      edgeLength(edgeOf(dress, 'centre back', 'neckline')),
      6,
    );
    expect(notion(dress, 'stay tape for the straps')?.length).toBeCloseTo(
      edgeLength(edgeOf(dress, 'front strap', 'inner')) + edgeLength(edgeOf(dress, 'back strap', 'inner')),
      6,
    );
  });

  it('has a waist stay of the finished waist in its seam, or of her own waist inside, or none', () => {
    expect(notion(dress, 'waist stay tape')?.length).toBeCloseTo(740 + 30, 6);
    const ribbon = drafted('dress', lady, { waistStay: 'ribbon' });
    expect(notion(ribbon, 'waist stay ribbon')?.length).toBeCloseTo(740 + 2 * 25, 6);
    const none = drafted('dress', lady, { waistStay: 'none' }).garment.notions;
    expect(none.filter(({ name }) => name.includes('waist'))).toEqual([]);
  });

  it('has interfacing behind the buttonholes, or a tape for a neckline gathered for good; facings have theirs cut', () => {
    expect(notion(dress, 'interfacing behind the buttonholes')).toMatchObject({ count: 2, length: 30 });
    const fixed = drafted('dress', lady, { necklineGathers: 'fixed', inside: 'faced' });
    const { step } = { step: stepsOf(fixed).find(({ title }) => title.startsWith('Gather the neckline')) };
    const drawnUp = step?.amounts?.find(({ says }) => says.endsWith('drawn up'))?.mm;
    expect(notion(fixed, 'tape for the gathered neckline')?.length).toBe(drawnUp);
    expect(pieceOf(fixed, 'back neck facing').cut.map(({ cloth }) => cloth)).toEqual(['self', 'interfacing']);
  });

  it('is all put to use', () => {
    for (const evaluation of [dress, sideways]) {
      const used = new Set(stepsOf(evaluation).flatMap(({ uses }) => uses ?? []));
      expect(evaluation.garment.notions.filter(({ name }) => !used.has(name))).toEqual([]);
    }
  });
});

describe('the seam that a zip goes into', () => {
  it('is tacked where the zip will be, and nowhere sewn to be unpicked', () => {
    for (const evaluation of [dress, sideways])
      expect(
        stepsOf(evaluation)
          .flatMap(({ how }) => how)
          .join(' '),
      ).not.toMatch(/unpick/i);
    const tacked = (step: SewingStep) =>
      step.brings?.filter(({ is }) => is === 'tacked').map(({ piece }) => piece);
    expect(tacked(sewing(sideways, 'side'))).toEqual(['side front', 'side back']);
    expect(tacked(sewing(sideways, 'skirt, side'))).toEqual(['skirt side front', 'skirt side back']);
    expect(sewing(dress, 'centre back').how.join(' ')).toContain('tack the rest');
    expect(sewing(dress, 'side').brings).toBeUndefined();
  });

  it('must be tacked before the zip is set in, and must get its zip', () => {
    const zip = 'Set in the zip at the left side';
    const steps = stepsOf(sideways);
    const without = steps.filter(({ title }) => title !== zip);
    expect(faultsOf(sideways, without)).toContain('sewing-left-out: side front/side');
    const [step] = steps.filter(({ title }) => title === zip);
    const early = without.flatMap((each) =>
      each.title === 'Sew the side seams' && step ? [step, each] : [each],
    );
    expect(faultsOf(sideways, early)).toContain(`sewing-too-early: ${zip}`);
  });
});

describe('the trial bodice', () => {
  it('has on every seam the allowance that the limits of a fitting are made from, and leaves its edges raw', () => {
    const trial = drafted('trial', lady);
    const sewn = new Set(
      trial.garment.seams.flatMap(({ a, b }) => [...a, ...b].map(({ piece, edge }) => `${piece}/${edge}`)),
    );
    for (const piece of trial.garment.pieces)
      for (const edge of piece.edges)
        if (sewn.has(`${piece.name}/${edge.name}`)) expect(edge.allowance, edge.name).toBe(trialAllowance);
    for (const { sews, finish } of stepsOf(trial)) if (sews) expect(finish).toBe('raw');
  });
});
