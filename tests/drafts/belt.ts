import { drawGarment } from '../../drafts/draw-garment.ts';
import { fairLines } from '../../drafts/fair-lines.ts';
import { grainline } from '../../drafts/grainline.ts';
import { makingChoices, waistEase } from '../../drafts/making-choices.ts';
import { cutOnFold, seamEdge, solvedCurve, solvedPoint, straight } from '../../drafts/piece-edges.ts';
import { plainSeam } from '../../drafts/seams.ts';
import { endOf, startOf } from '../../engine/constraints/sketch-builder.ts';
import { isLong, square } from '../../engine/constraints/statements.ts';
import { point } from '../../engine/geometry/point.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { ruleTable } from '../../engine/pattern/rule.ts';
import type { Seam } from '../../engine/pattern/seam.ts';
import type { Choice, StylingOf } from '../../engine/pattern/styling.ts';
import { commonPractice } from '../../engine/sources.ts';

const depth = {
  kind: 'number',
  name: 'beltDepth',
  unit: 'mm',
  default: 60,
  min: 30,
  max: 100,
  help: 'how far the belt reaches below the waist',
} as const satisfies Choice;

const choices = [waistEase, depth, ...makingChoices] as const;

const rules = ruleTable('T', {
  hipTakesOver: [
    0.9,
    'share',
    'at this share of the way to the hip level the hip is reached',
    commonPractice,
  ],
});

/** The belt is cut twice and sewn to itself all round. */
const toItself = (edge: string): Seam => {
  const ref = [{ piece: 'belt', edge }];
  return plainSeam(`belt, ${edge}`, ref, ref);
};
const seams = ['top', 'centre back', 'bottom'].map(toItself);

/** A shaped belt from the waist down, open at the centre back: the example of drafts/README.md. */
export const belt: Draft<StylingOf<typeof choices>> = {
  name: 'belt',
  title: 'Shaped belt',
  choices,
  shapedBy: ['waistGirth', 'hipGirth', 'waistToHip'],
  draw: (body, chosen, solver) =>
    drawGarment({ name: 'belt', choices, styling: chosen, body, solver }, (table) => {
      const { size, choice, styling, sketch, mm, ratio } = table;
      const top = mm`Half belt, top: (waist girth ${size.waistGirth} + ease ${choice.waistEase}) / 2`;
      const share = ratio`Share of the way to the hips: depth ${choice.beltDepth} / (${rules.hipTakesOver} of waist to hip ${size.waistToHip})`;
      const girth = mm`Girth there: waist girth ${size.waistGirth} + ${share} of (hip girth ${size.hipGirth} - ${size.waistGirth})`;
      const bottom = mm`Half belt, bottom: (girth there ${girth} + ease ${choice.waistEase}) / 2`;

      const frontTop = sketch.fixed('front top', point(0, 0));
      const frontBottom = sketch.fixed('front bottom', point(0, styling.beltDepth));
      const backTop = sketch.point('back top', point(top.value, 0));
      const backBottom = sketch.point('back bottom', point(bottom.value, styling.beltDepth));
      const upper = sketch.curve('top', frontTop, backTop, {
        start: { angle: sketch.fixedAngle('top square to the fold', 0) },
      });
      const back = sketch.line('centre back', backTop, backBottom);
      const lower = sketch.curve('bottom', backBottom, frontBottom, {
        end: { angle: sketch.fixedAngle('bottom square to the fold', Math.PI) },
      });
      fairLines(sketch, [upper, lower]);
      sketch.relation(
        isLong('the top is half the waist', [upper], top.value),
        isLong('the bottom fits below it', [lower], bottom.value),
        isLong('it is evenly deep', [back], styling.beltDepth),
        square('top square to the back', endOf(upper), startOf(back), 1),
        square('bottom square to it', endOf(back), startOf(lower), 1),
      );

      return (solution) => {
        const edge = (name: string, rank: number) =>
          seamEdge(name, [solvedCurve(solution, name)], styling.seamAllowance, rank);
        const [fromFold, toFold] = [solvedPoint(solution, frontTop), solvedPoint(solution, frontBottom)];
        const piece = {
          name: 'belt',
          number: 1,
          edges: [
            edge(upper, 2),
            edge(back, 1),
            edge(lower, 2),
            {
              ...edge(back, 3),
              name: 'centre front',
              curves: straight(toFold, fromFold),
              turn: 'fold',
              allowance: 0,
            },
          ],
          grain: grainline(point(styling.beltDepth / 2, 0), point(styling.beltDepth / 2, styling.beltDepth)),
          notches: [{ name: 'centre front', edge: 'top', at: 0, mark: 'fold' }],
          lines: [],
          marks: [],
          cut: [...cutOnFold('self'), ...cutOnFold('lining')],
        } as const;
        const corner = (line: string, seam: string) => ({ piece: 'belt', edge: line, seam });
        const value = {
          pieces: [piece],
          seams,
          joins: ['top', 'bottom'].map((line) => ({
            kind: 'mirror' as const,
            name: `${line} at the fold`,
            a: corner(line, 'centre front'),
          })),
          girths: [
            {
              level: 'waist',
              body: size.waistGirth.value,
              ease: styling.waistEase,
              parts: [{ kind: 'edge' as const, piece: 'belt', edge: 'top', times: 2 }],
            },
          ],
          notions: [],
          shapes: [],
          sewing: {
            finish: [
              {
                title: 'Sew the belt to its lining and turn it',
                sews: seams.map(({ name }) => name),
                presses: seams.map(({ name }) => name),
                finish: 'graded' as const,
                how: [
                  'Sew round, right sides together, leave a gap, turn, press, and close the gap by hand.',
                ],
              },
            ],
          },
        };
        return { ok: true, value, issues: [] };
      };
    }),
};
