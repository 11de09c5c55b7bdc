import { describe, expect, it } from 'vitest';
import { foundationRules as rules } from '../../../drafts/foundation/rules.ts';
import { measurementNames } from '../../../engine/body/body.ts';
import type { Evaluation } from '../../../engine/evaluate.ts';
import { edgeLength, edgeStart, joinedEdges } from '../../../engine/geometry/edge.ts';
import { edgeCrossings, levelAt } from '../../../engine/geometry/intersect.ts';
import { turnedAbout, vectorBetween } from '../../../engine/geometry/point.ts';
import { transformedEdge } from '../../../engine/geometry/transform.ts';
import { cross } from '../../../engine/geometry/vector.ts';
import { drafted, edgeOf, pieceOf, placedOn, shippedBodies, shippedBody, stepOf } from '../drafted.ts';

const blocks = shippedBodies.map((name) => [name, drafted('trial', shippedBody(name))] as const);

/** All measurements of a shipped body, mm and degrees, so that none is estimated from another that is changed. */
const inMm = (name: string): Readonly<Record<string, number>> => {
  const { size } = drafted('trial', shippedBody(name)).body;
  return Object.fromEntries(
    measurementNames.map((each) => [
      each,
      each === 'shoulderSlope' ? (size[each] * 180) / Math.PI : size[each],
    ]),
  );
};

/** How far from the centre an armhole lies at a level, mm, on the drawing before the dart is closed. */
function armholeAt(block: Evaluation, half: 'front' | 'back', y: number): number {
  const whole = joinedEdges('armhole', [
    edgeOf(block, `side ${half}`, 'armhole upper'),
    edgeOf(block, `side ${half}`, 'armhole underarm'),
  ]);
  const dart = half === 'front' ? stepOf(block, 'Bust dart angle') : 0;
  const pivot = placedOn(block, half, 'princess line at bust level');
  const open = transformedEdge(whole, (p) => turnedAbout(p, pivot, -dart));
  return edgeCrossings(open, levelAt(y))[0]?.point.x ?? Number.NaN;
}

describe('the foundation', () => {
  it.each(blocks)(
    'has its armhole pass the folds of the arms, behind to 3 mm, in front to 5: %s',
    (_, block) => {
      const back = placedOn(block, 'back', 'across back');
      const front = placedOn(block, 'front', 'across front');
      const { acrossBackWidth, acrossFrontWidth } = block.body.size;
      expect(back.x).toBeCloseTo(acrossBackWidth / 2 + rules.acrossBackEase.value, 9);
      expect(front.x).toBeCloseTo(acrossFrontWidth / 2 + rules.acrossFrontEase.value, 9);
      expect(Math.abs(armholeAt(block, 'back', back.y) - back.x)).toBeLessThan(3);
      expect(Math.abs(armholeAt(block, 'front', front.y) - front.x)).toBeLessThan(5);
    },
  );

  it.each(blocks)('has straight side seams, as steep in front as behind: %s', (_, block) => {
    for (const half of ['front', 'back']) {
      const [underarm, bust, waist] = ['underarm', 'side at bust level', 'side at waist'].map((name) =>
        placedOn(block, half, name),
      );
      if (!underarm || !bust || !waist) throw new Error('no side seam');
      expect(cross(vectorBetween(underarm, bust), vectorBetween(bust, waist))).toBeCloseTo(0, 6);
    }
    const lean = (half: string) =>
      placedOn(block, half, 'underarm').x - placedOn(block, half, 'side at waist').x;
    expect(lean('front')).toBeCloseTo(lean('back'), 9);
  });

  it('lowers its underarm by an eighth of what the armscye is longer, between 8 and 25 mm below the scye depth', () => {
    const measured = inMm('prompter');
    const scyeDepth = measured.scyeDepth ?? Number.NaN;
    const below = (armscyeGirth: number): number => {
      const made = drafted('trial', { ...measured, name: 'prompter', units: 'mm', armscyeGirth });
      return edgeStart(edgeOf(made, 'side back', 'side')).y - scyeDepth;
    };
    const usual = 2 * scyeDepth;
    expect(below(usual)).toBeCloseTo(15, 6);
    expect(below(usual + 32)).toBeCloseTo(15 + 4, 6);
    expect(below(usual - 32)).toBeCloseTo(15 - 4, 6);
    expect(below(usual - 70)).toBeCloseTo(8, 6);
    expect(below(usual + 90)).toBeLessThanOrEqual(25);
  });

  it('raises its underarm without sleeves, and lies closer round the bust', () => {
    const lady = shippedBody('prompter');
    const underarm = (made: Evaluation): number => edgeStart(edgeOf(made, 'side back', 'side')).y;
    const whole = { shoulder: 'whole', front: 'plain' };
    const [sleeved, bare] = [
      drafted('dress', lady, whole),
      drafted('dress', lady, { ...whole, sleeve: 'none' }),
    ];
    expect(underarm(sleeved) - underarm(bare)).toBeCloseTo(rules.sleevelessRaise.value, 6);
    expect(stepOf(sleeved, 'Ease at the bust') - stepOf(bare, 'Ease at the bust')).toBeCloseTo(10, 9);
  });
});

describe('the breast', () => {
  const block = (changed: object) =>
    drafted('trial', { ...inMm('leading-lady'), name: 'leading lady', units: 'mm', ...changed });
  const pointsOfBack = ({ garment }: Evaluation) =>
    garment.steps.flatMap(({ draws }) => draws?.points ?? []).filter(({ on }) => on === 'back');

  it('is all in front: fuller, it leaves every point of the back where it was', () => {
    const made = [
      { bustGirth: 920, underBustGirth: 760 },
      { bustGirth: 920, underBustGirth: 800 },
      { bustGirth: 940, underBustGirth: 800 },
    ].map((girths) => block({ ...girths, waistGirth: 700 }));
    const [first, ...others] = made.map(pointsOfBack);
    expect(first?.length).toBeGreaterThan(8);
    for (const other of others) expect(other).toEqual(first);
    // The waist leaves the side seam square on both panels, so the back's curves know nothing of the front's.
    const widths = made.map((each) =>
      ['centre back', 'side back'].flatMap((piece) => [
        edgeLength(edgeOf(each, piece, 'waist')),
        ...pieceOf(each, piece).lines.map(edgeLength),
      ]),
    );
    for (const [i, width] of (widths[0] ?? []).entries())
      for (const other of widths) expect(Math.abs((other[i] ?? 0) - width)).toBeLessThan(0.001);
  });

  it('widens the front by as much as half the bust grows', () => {
    const front = (bustGirth: number): number =>
      placedOn(block({ bustGirth }), 'front', 'side at bust level').x;
    expect(front(940) - front(920)).toBeCloseTo(10, 6);
  });
});
