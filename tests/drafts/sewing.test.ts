import { describe, expect, it } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { workroomRules } from '../../drafts/workroom-rules.ts';
import { tapeFor } from '../../engine/checks/tape.ts';
import type { Evaluation } from '../../engine/evaluate.ts';
import { edgeEnd, edgeLength, edgeStart } from '../../engine/geometry/edge.ts';
import { distance } from '../../engine/geometry/point.ts';
import { stepFacts } from '../../engine/render/sewing-sheet/step-facts.ts';
import { drafted, edgeOf, pieceOf, shippedBodies, shippedBody } from './drafted.ts';
import { evaluated } from './points.ts';

const lady = shippedBody('leading-lady');
const dress = drafted('dress', lady);

/** What the other words of a choice are tried with. */
const families = {
  'straps, gathered front': {},
  'whole shoulder, plain front': { shoulder: 'whole', front: 'plain' },
} as const;

const stepOf = ({ garment }: Evaluation, title: string) => {
  const step = garment.sewing?.find((candidate) => candidate.title === title);
  if (!step) throw new Error(`no step ${title}`);
  return { step, facts: stepFacts(garment, step, tapeFor(garment)) };
};

const sewingFaultsOf = ({ report }: Evaluation) =>
  report.issues.filter(({ code }) => code.startsWith('sewing-'));

describe('the sewing order of every garment', () => {
  it('can be followed for every body that ships, and has steps', () => {
    for (const { name } of garments)
      for (const body of shippedBodies) {
        const evaluation = drafted(name, shippedBody(body));
        expect(sewingFaultsOf(evaluation), `${name} for ${body}`).toEqual([]);
        expect(evaluation.garment.sewing?.length).toBeGreaterThan(3);
      }
  });

  it.each(Object.entries(families))(
    'can be followed for every word a styling can choose, or that word is refused by its name: %s',
    (_, family) => {
      for (const { name, choices } of garments) {
        const known = Object.entries(family).filter(([word]) =>
          choices.some((choice) => choice.name === word),
        );
        for (const choice of choices)
          if (choice.kind === 'word')
            for (const word of choice.words) {
              const styling = { ...Object.fromEntries(known), [choice.name]: word };
              const result = evaluated(name, shippedBody('leading-lady'), styling);
              if (result.ok)
                expect(sewingFaultsOf(result.value), `${name}, ${JSON.stringify(styling)}`).toEqual([]);
              else
                expect(
                  result.issues.map(({ code }) => code),
                  `${name}, ${JSON.stringify(styling)}`,
                ).toEqual(expect.arrayContaining(['styling-cannot-agree']));
            }
      }
    },
  );

  it('refuses only words that a gathered front, or a strap, has no place for', () => {
    const refused = (family: object) => {
      const [dress] = garments;
      return (dress?.choices ?? []).flatMap((choice) =>
        choice.kind === 'word'
          ? choice.words
              .filter((word) => !evaluated('dress', lady, { ...family, [choice.name]: word }).ok)
              .map((word) => `${choice.name} ${word}`)
          : [],
      );
    };
    expect(refused(families['straps, gathered front'])).toEqual([
      'princess shoulder',
      'princess armhole',
      'neckline round',
      'neckline pointed',
      'neckline sweetheart',
    ]);
    expect(refused(families['whole shoulder, plain front'])).toEqual([]);
  });

  it('sews each seam, by its own count, exactly once', () => {
    for (const { name } of garments) {
      const { garment } = drafted(name, shippedBody('understudy'));
      const sewn = garment.sewing?.flatMap(({ sews }) => sews ?? []) ?? [];
      expect(sewn.toSorted()).toEqual(garment.seams.map((seam) => seam.name).toSorted());
    }
  });

  it('gathers a neckline for good before the seam that crosses its ends, and uses no cord', () => {
    const fixed = drafted('dress', shippedBody('leading-lady'), { necklineGathers: 'fixed' });
    const titles = fixed.garment.sewing?.map(({ title }) => title) ?? [];
    expect(titles.join()).not.toMatch(/drawstring|buttonhole/i);
    expect(titles.indexOf('Gather the neckline of the insert for good')).toBeLessThan(
      titles.indexOf('Sew the front princess seams'),
    );
  });
});

describe('the figures of a step', () => {
  it('are the lengths of the garment’s own edges', () => {
    const { facts } = stepOf(dress, 'Gather the insert and sew the under-bust seam');
    const gathered = facts.seams.find(({ seam }) => seam.name === 'under-bust, gathered');
    expect(gathered?.lengthA).toBeCloseTo(edgeLength(edgeOf(dress, 'insert', 'bottom')), 6);
    expect(gathered?.lengthB).toBeCloseTo(2 * edgeLength(edgeOf(dress, 'centre front', 'under-bust')), 6);
    expect(gathered?.between).toEqual(['left end of gathers', 'right end of gathers']);
    expect(facts.allowances).toEqual([12.7]);
  });

  it('say between which notches the crown of a sleeve is drawn up', () => {
    const { facts } = stepOf(dress, 'Gather the crowns and set in the sleeves');
    const crown = facts.seams.find(({ seam }) => seam.name === 'armhole, crown');
    expect(crown?.between).toEqual(['back armhole notch', 'front armhole notch']);
    expect(crown?.matched).toEqual(['shoulder']);
    expect(crown?.lengthA).toBeCloseTo(edgeLength(edgeOf(dress, 'sleeve', 'crown')), 6);
  });

  it('name the notches that meet along a seam', () => {
    const { facts } = stepOf(dress, 'Sew the side seams');
    expect(facts.seams[0]?.matched).toEqual(['bust level', 'under-bust level']);
  });

  it('give the neckline of the insert as it is cut', () => {
    const neckline = edgeOf(dress, 'insert', 'neckline');
    const { step } = stepOf(dress, 'Thread the drawstrings');
    const flat = step.amounts?.find(({ says }) => says === 'neckline of the insert, flat')?.mm;
    expect(flat).toBeCloseTo(distance(edgeStart(neckline), edgeEnd(neckline)), 6);
  });

  it('give the notions that are used, as long as the garment has them', () => {
    const { facts } = stepOf(dress, 'Thread the elastic');
    const arm = dress.body.size.upperArmGirth;
    // Limb girth less half an inch for hold, ends lapped half an inch: sewing lessons, read second-hand.
    expect(facts.notions[0]?.length).toBeCloseTo(arm - 12.7 + 12.7, 6);
    expect(facts.notions[0]?.count).toBe(2);
  });
});

describe('workroom arithmetic', () => {
  // J. W. Stephenson, Cutting and Draping: light goods are gathered 2:1, medium 1.5:1; a flat length is the finished
  // length times the ratio, so that 20 in at 2.5 take 50 in.
  it.each([
    [2, 'light cloth'],
    [1.5, 'medium cloth'],
    [2.5, 'sheer cloth'],
  ])('gathers cut flat at the finished length times %s for %s', (ratio) => {
    const full = drafted('dress', shippedBody('leading-lady'), { insertFullness: ratio });
    const { facts } = stepOf(full, 'Gather the insert and sew the under-bust seam');
    const gathered = facts.seams.find(({ seam }) => seam.gatherRatio !== 1);
    expect(gathered?.lengthA).toBeCloseTo(ratio * (gathered?.lengthB ?? 0), 4);
  });

  // Sewing & Craft Alliance, guideline 12.150: a casing is a quarter inch wider than what goes into it, and its raw
  // edge is turned under by a quarter inch.
  it.each([6, 10, 20])('a casing for elastic %i mm wide is a quarter inch wider', (elasticWidth) => {
    const evaluation = drafted('dress', shippedBody('leading-lady'), { elasticWidth });
    const sleeve = pieceOf(evaluation, 'sleeve');
    const hem = edgeOf(evaluation, 'sleeve', 'hem');
    const casing = sleeve.lines.find(({ name }) => name === 'casing')?.curves[0];
    expect(edgeStart(hem).y - (casing?.from.y ?? 0)).toBeCloseTo(elasticWidth + 25.4 / 4, 6);
    expect(hem.allowance).toBeCloseTo(elasticWidth + 25.4 / 2, 6);
  });

  // Two rows a quarter inch apart: lesson pages, second-hand. Opening of two inches (5 cm): a sewing handbook’s chapter
  // on casings. Edge stitching an eighth of an inch from the fold: guideline 12.150.
  it('has two gathering rows a quarter inch apart, an opening of 5 cm, and edge stitching at an eighth of an inch', () => {
    const rows = pieceOf(dress, 'insert').lines.filter(({ kind }) => kind === 'gathering');
    expect(rows).toHaveLength(2);
    const [one, other] = rows.map(({ curves }) => curves[0]?.from);
    expect(one && other && distance(one, other)).toBeCloseTo(25.4 / 4, 3);
    expect(workroomRules.opening.value).toBe(50);
    expect(workroomRules.edgeStitch.value).toBeCloseTo(25.4 / 8, 6);
  });
});
