import { describe, expect, test } from 'vitest';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import { edgeEnd, edgeStart } from '../../../engine/geometry/edge.ts';
import type { Point } from '../../../engine/geometry/point.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import { type Cloth, lengthNeeded, stripStart, stripWidth } from '../../../engine/lay-plan/cloth.ts';
import { laySvg } from '../../../engine/lay-plan/lay-drawing.ts';
import {
  type LayPlan,
  type LayTask,
  layPlan,
  layTasks,
  piecesAsked,
} from '../../../engine/lay-plan/lay-plan.ts';
import { matchingAlong } from '../../../engine/lay-plan/matching-along.ts';
import { provePlan } from '../../../engine/lay-plan/prove-plan.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';
import { laid } from '../lay/shapes.ts';

const repeat = 40;
const check: Cloth = {
  width: 1400,
  folded: true,
  nap: false,
  selvedge: 10,
  gap: 0,
  shrink: 0,
  stripe: 60,
  stripeAlong: repeat,
};
const { garment } = drafted('dress', shippedBody('leading-lady'));
const lines = cuttingLines(garment, PARALLEL);

function taskOn(cloth: Cloth): LayTask {
  const tasks = layTasks(garment, lines, cloth);
  const task = tasks.ok ? tasks.value[0] : undefined;
  if (!task) throw new Error('nothing to lay');
  return task;
}

function planOn(cloth: Cloth): LayPlan {
  const task = taskOn(cloth);
  return layPlan(task, laid(task.problem, 40), garment);
}

/** Where each copy of a piece has the end of an edge across the cloth, from the line on which it begins, and which way it lies there. */
function acrossCloth({ copies, cloth }: LayPlan, name: string, edge: string, end: 'start' | 'end') {
  const piece = garment.pieces.find((each) => each.name === name);
  const found = piece?.edges.find((each) => each.name === edge);
  if (!piece || !found) throw new Error(`no ${edge} on the ${name}`);
  const { from, to } = piece.grain;
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  /** How far a point lies from the grain to the wearer's side. */
  const beside = ({ x, y }: Point): number =>
    ((x - from.x) * (to.y - from.y) - (y - from.y) * (to.x - from.x)) / length;
  const at = beside(end === 'start' ? edgeStart(found) : edgeEnd(found));
  const corners = lines.get(name)?.curves.map((curve) => beside(curve.from)) ?? [];
  return copies
    .filter(({ of }) => of.piece === name)
    .map(({ line, grain }) => {
      // As drawn a copy whose top lies to the left has the wearer's side above its grain.
      const below = line.curves.map((curve) => curve.from.y - grain.from.y);
      const way = mean(below) * mean(corners) > 0 ? 1 : -1;
      return { way, y: grain.from.y + way * at - stripStart(cloth), topLeft: grain.from.x < grain.to.x };
    });
}

/** How far each copy has the end of an edge from the nearest stripe, and on which side of it. */
const besideStripes = (plan: LayPlan, name: string, edge: string, end: 'start' | 'end') =>
  acrossCloth(plan, name, edge, end).map(({ way, y }) => way * (y - repeat * Math.round(y / repeat)));

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe('stripes along the cloth', () => {
  const { matched, unmatched } = matchingAlong(garment, repeat);

  test('meet across the waist, and in a point at sides that are equally aslant', () => {
    expect(matched).toEqual(
      expect.arrayContaining([
        'waist, centre front',
        'waist, side front',
        'waist, side back',
        'waist, centre back',
        'skirt, side',
      ]),
    );
  });

  test('are said not to meet where the two sides are shaped otherwise', () => {
    expect(unmatched).toEqual(
      expect.arrayContaining(['front princess, upper left', 'skirt, front princess']),
    );
    expect(matched.filter((name) => unmatched.includes(name))).toEqual([]);
  });

  for (const folded of [true, false]) {
    const how = folded ? 'folded' : 'open';
    const plan = planOn({ ...check, folded });
    const svg = laySvg(plan, '1 m');
    const asked = piecesAsked(garment, 'self');

    test(`are proven on the plan of ${how} cloth, and missed where the repeat is another`, () => {
      expect(provePlan(svg, plan.pieces, asked)).toEqual([]);
      const other = svg.replace(/data-repeat-across="[^"]*"/, 'data-repeat-across="37"');
      expect(provePlan(other, plan.pieces, asked).map(({ code }) => code)).toContain('lay-off-stripe');
    });

    test(`lie on the centre back of every copy on ${how} cloth`, () => {
      for (const name of ['centre back', 'skirt centre back'])
        for (const off of besideStripes(plan, name, 'centre back', 'start')) expect(off).toBeCloseTo(0, 2);
    });

    test(`have the waists of bodice and skirt on one place of the repeat on ${how} cloth, turned over or not`, () => {
      const ends = [
        ...besideStripes(plan, 'side front', 'waist', 'start'),
        ...besideStripes(plan, 'side front', 'waist', 'end'),
      ];
      const others = [
        ...besideStripes(plan, 'skirt side front', 'waist', 'start'),
        ...besideStripes(plan, 'skirt side front', 'waist', 'end'),
      ];
      expect(ends.length).toBe(folded ? 2 : 4);
      for (const off of ends)
        expect(Math.min(...others.map((other) => Math.abs(other - off)))).toBeLessThan(1);
    });
  }

  test('meet in the middle of what is gathered across the grain, and at no other place of it', () => {
    const { matchedOnce } = matchingAlong(garment, repeat);
    expect(matchedOnce).toEqual(['under-bust, gathered']);
  });

  // Uneven stripes are laid with all tops one way and then run round her in one direction: common practice, no source. That
  // they do so on folded cloth too follows from the fold: the upper layer, seen on its right side, is the lower turned about it.
  describe.each([true, false])(
    'whose colours follow each other in one order, on cloth that is folded: %s',
    (folded) => {
      const plan = planOn({ ...check, stripe: 0, folded, oneOrder: true });

      /**
       * Where, in the order of the colours, the end of an edge lies on the right side of each piece that is cut: on open cloth and
       * on the lower layer, right side up, as far as it lies across, on the upper as far on the other side of the fold. `left` is
       * the piece whose side lies against the order.
       */
      const colours = (name: string, edge: string, end: 'start' | 'end') =>
        acrossCloth(plan, name, edge, end).flatMap(({ way, y, topLeft }) =>
          (folded ? [1, -1] : [1]).map((layer) => ({ left: way * layer < 0, at: layer * y, topLeft })),
        );
      const apart = (a: number, b: number): number =>
        Math.abs((a - b) / repeat - Math.round((a - b) / repeat)) * repeat;

      test('run on over the waist, left and right', () => {
        // The waists of a bodice and of the skirt below it, both clockwise, run against each other.
        for (const name of ['side front', 'side back', 'centre back'])
          for (const [end, below] of [
            ['start', 'end'],
            ['end', 'start'],
          ] as const) {
            const bodices = colours(name, 'waist', end);
            const skirts = colours(`skirt ${name}`, 'waist', below);
            expect(bodices.map(({ left }) => left).toSorted()).toEqual([false, true]);
            for (const { left, at, topLeft } of bodices) {
              expect(topLeft).toBe(true);
              const skirt = skirts.find((each) => each.left === left)?.at ?? Number.NaN;
              expect(apart(at, skirt), `${name} ${end}`).toBeLessThan(1);
            }
          }
      });

      test('run on from left to right over the centre back', () => {
        for (const name of ['centre back', 'skirt centre back']) {
          const [one, other] = colours(name, 'centre back', 'start');
          expect(one?.left).not.toBe(other?.left);
          expect(apart(one?.at ?? Number.NaN, other?.at ?? Number.NaN)).toBeLessThan(0.01);
        }
      });

      test('are proven on the plan, which says so', () => {
        const svg = laySvg(plan, '1 m');
        expect(provePlan(svg, plan.pieces, piecesAsked(garment, 'self'))).toEqual([]);
        expect(svg).toContain('their colours in one order');
      });

      test('lie all one way up', () => {
        expect(plan.pieces.flatMap(({ ways }) => ways.map(({ turn }) => turn))).not.toContain(180);
      });
    },
  );

  test('whose colours follow each other in one order meet nowhere as a mirror image, and that is said', () => {
    const even = matchingAlong(garment, repeat);
    const inOrder = matchingAlong(garment, repeat, true);
    const lost = even.matched.filter((name) => !inOrder.matched.includes(name));
    // Sides that are equally aslant, and meet in a point.
    expect(lost).toEqual(['skirt, side', 'skirt, back princess', 'lining, side']);
    expect(lost.filter((name) => !inOrder.unmatched.includes(name))).toEqual([]);
    expect(inOrder.matched).toEqual(
      expect.arrayContaining(['waist, centre front', 'waist, side front', 'waist, side back', 'front strap']),
    );
    const alone = drafted('bodice', shippedBody('leading-lady')).garment;
    expect(matchingAlong(alone, repeat).matched).toContain('side');
    expect(matchingAlong(alone, repeat, true).unmatched).toContain('side');
    const whole = drafted('bodice', shippedBody('leading-lady'), {
      shoulder: 'whole',
      front: 'plain',
    }).garment;
    expect(matchingAlong(whole, repeat, true).unmatched).toContain('shoulder');
  });

  test('let a piece lie either way up, unless there are stripes across as well', () => {
    const waysOn = (cloth: Cloth) => taskOn(cloth).pieces.flatMap(({ ways }) => ways.map(({ turn }) => turn));
    expect(waysOn({ ...check, stripe: 0 })).toContain(180);
    expect(waysOn(check)).not.toContain(180);
  });

  test('take a repeat of the width, half of it where the cloth is folded, and no length', () => {
    const open = { ...check, folded: false };
    expect(stripWidth(open)).toBe(1400 - 20 - 40);
    expect(stripWidth(check)).toBe(700 - 20 - 10);
    expect(stripWidth({ ...open, shrink: 0.05 })).toBeCloseTo(0.95 * 1360 - 20, 9);
    expect(lengthNeeded({ ...check, stripe: 0 }, 1000)).toBe(1000);
  });
});
