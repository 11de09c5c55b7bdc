import { describe, expect, test } from 'vitest';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import { pointAlong } from '../../../engine/geometry/edge.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import type { Cloth } from '../../../engine/lay-plan/cloth.ts';
import { alongX } from '../../../engine/lay-plan/laid-piece.ts';
import { laySvg } from '../../../engine/lay-plan/lay-drawing.ts';
import { layPlan, layTasks, piecesAsked } from '../../../engine/lay-plan/lay-plan.ts';
import { matching } from '../../../engine/lay-plan/matching.ts';
import { provePlan } from '../../../engine/lay-plan/prove-plan.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { drafted, shippedBody } from '../../drafts/drafted.ts';
import { laid } from '../lay/shapes.ts';

const repeat = 60;
const cloth: Cloth = {
  width: 1400,
  folded: true,
  nap: false,
  selvedge: 10,
  gap: 0,
  shrink: 0,
  stripe: repeat,
};
const { garment } = drafted('bodice', shippedBody('leading-lady'));
const lines = cuttingLines(garment, PARALLEL);
const tasks = layTasks(garment, lines, cloth);
const task = tasks.ok ? tasks.value[0] : undefined;
if (!task) throw new Error('nothing to lay');
const plan = layPlan(task, laid(task.problem, 60), garment);
const asked = piecesAsked(garment, 'self');

/** How far along the cloth a notch of a piece lies on the plan: as far along its grain, as that is drawn on both. */
function onCloth(name: string, edges: readonly string[], notch: string): number {
  const piece = garment.pieces.find((each) => each.name === name);
  const mark = piece?.notches.find((each) => each.name === notch && edges.includes(each.edge));
  const edge = piece?.edges.find((each) => each.name === mark?.edge);
  const copy = plan.copies.find(({ of }) => of.piece === name);
  if (!piece || !mark || !edge || !copy) throw new Error(`no ${notch} on ${name}`);
  const { from, to } = piece.grain;
  const { point } = pointAlong(edge, mark.at);
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const along = ((point.x - from.x) * (to.x - from.x) + (point.y - from.y) * (to.y - from.y)) / length;
  return copy.grain.from.x + along;
}

/** How far apart two pieces have a notch on the repeat, each where it is matched, as `matching` places them. */
function apartOnRepeat(
  made: Garment,
  [notch, on]: readonly [string, string],
  [one, other]: readonly [string, string],
): number {
  const { phases } = matching(made, repeat);
  const [a, b] = [one, other].map((name) => {
    const piece = made.pieces.find((each) => each.name === name);
    const mark = piece?.notches.find((each) => each.name === notch && each.edge.includes(on));
    const edge = piece?.edges.find((each) => each.name === mark?.edge);
    if (!piece || !mark || !edge) throw new Error(`no ${notch} on ${name}`);
    return alongX(piece)(pointAlong(edge, mark.at).point).x + (phases.get(name) ?? Number.NaN);
  });
  const repeats = ((a ?? Number.NaN) - (b ?? Number.NaN)) / repeat;
  return Math.abs(repeats - Math.round(repeats)) * repeat;
}

describe('stripes', () => {
  const { matched, unmatched } = matching(garment, repeat);

  test('meet at the side and princess seams of a bodice', () => {
    expect(matched).toEqual(expect.arrayContaining(['side', 'back princess', 'front princess, lower']));
    expect(unmatched).not.toContain('side');
  });

  test('meet at a notch of both sides, on the plan as it is laid', () => {
    for (const name of ['side', 'back princess']) {
      const seam = garment.seams.find((each) => each.name === name);
      const sides = [seam?.a ?? [], seam?.b ?? []].map((side) => ({
        piece: side[0]?.piece ?? '',
        edges: side.map(({ edge }) => edge),
      }));
      const [first = [], second = []] = sides.map(({ piece, edges }) =>
        (garment.pieces.find((each) => each.name === piece)?.notches ?? [])
          .filter(({ edge }) => edges.includes(edge))
          .map((notch) => notch.name),
      );
      const apart = first
        .filter((notch) => second.includes(notch))
        .map((notch) => {
          const [on = 0, other = 0] = sides.map(({ piece, edges }) => onCloth(piece, edges, notch));
          const repeats = (on - other) / repeat;
          return Math.abs(repeats - Math.round(repeats)) * repeat;
        });
      expect(Math.min(...apart), name).toBeLessThan(0.01);
    }
  });

  test('let no piece lie upside down', () => {
    expect(task.pieces.every(({ ways }) => ways.every(({ turn }) => turn === 0))).toBe(true);
  });

  test('are proven on the written plan, and missed where the repeat is another', () => {
    const svg = laySvg(plan, '1 m');
    expect(provePlan(svg, task.pieces, asked)).toEqual([]);
    const other = svg.replace(/data-repeat="[^"]*"/, 'data-repeat="47"');
    expect(provePlan(other, task.pieces, asked).map(({ code }) => code)).toContain('lay-off-stripe');
  });

  test('meet at the front notch of a sleeve, set in with gathers or with ease, before its back one', () => {
    for (const [styling, front] of [
      [{}, 'front strap'],
      [{ shoulder: 'whole', front: 'plain' }, 'side front'],
      [{ shoulder: 'whole', front: 'plain', sleeve: 'plain' }, 'side front'],
    ] as const) {
      const made = drafted('dress', shippedBody('leading-lady'), styling).garment;
      const found = matching(made, repeat);
      expect(found.matchedOnce).toContain('armhole, crown');
      expect(found.matched).not.toContain('armhole, crown');
      expect(apartOnRepeat(made, ['front armhole notch', 'underarm'], ['sleeve', front])).toBeLessThan(0.01);
    }
  });

  test('meet at the bust level of an eased seam, and at the notch nearest to its middle where it is plain', () => {
    const eased: Garment = {
      ...garment,
      seams: garment.seams.map((seam) => (seam.name === 'side' ? { ...seam, ease: 0.001 } : seam)),
    };
    expect(matching(eased, repeat).matchedOnce).toContain('side');
    const sides = ['side front', 'side back'] as const;
    expect(apartOnRepeat(eased, ['bust level', 'side'], sides)).toBeLessThan(0.01);
    expect(apartOnRepeat(garment, ['under-bust level', 'side'], sides)).toBeLessThan(0.01);
  });

  test('are not asked to meet where gathers run across the grain, nor between two cloths', () => {
    const found = matching(garment, repeat);
    const named = [...found.matched, ...found.matchedOnce, ...found.unmatched];
    expect(named).not.toContain('under-bust, gathered');
    expect(named.filter((name) => /neckline/.test(name))).toEqual([]);
  });

  test('ask for the same lay with nap as without, for they run one way already', () => {
    const napped = layTasks(garment, lines, { ...cloth, nap: true });
    expect(napped.ok && napped.value.map(({ problem }) => problem)).toEqual(
      tasks.ok && tasks.value.map(({ problem }) => problem),
    );
  });
});
