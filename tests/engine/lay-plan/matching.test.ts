import { describe, expect, test } from 'vitest';
import { cuttingLines } from '../../../engine/finishing/cut-lines.ts';
import { pointAlong } from '../../../engine/geometry/edge.ts';
import { PARALLEL } from '../../../engine/geometry/tolerance.ts';
import type { Cloth } from '../../../engine/lay-plan/cloth.ts';
import { laySvg } from '../../../engine/lay-plan/lay-drawing.ts';
import { layPlan, layTasks, piecesAsked } from '../../../engine/lay-plan/lay-plan.ts';
import { matching } from '../../../engine/lay-plan/matching.ts';
import { provePlan } from '../../../engine/lay-plan/prove-plan.ts';
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
});
