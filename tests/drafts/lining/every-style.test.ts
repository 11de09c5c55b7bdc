import { describe, expect, it } from 'vitest';
import { dress } from '../../../drafts/dress.ts';
import type { Solution } from '../../../engine/constraints/solution.ts';
import { type Solver, solve } from '../../../engine/constraints/solve.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { drafted, shippedBody } from '../drafted.ts';

/** What can be chosen together: where the princess line begins, and which necklines there are, depend on the rest. */
const shapes = [
  { shoulder: 'strap', front: 'gathered' },
  { shoulder: 'whole', front: 'gathered' },
  ...['whole', 'parted'].flatMap((centreFront) => [
    { shoulder: 'strap', front: 'plain', centreFront, princess: 'neckline' },
    ...['neckline', 'shoulder', 'armhole'].map((princess) => ({
      shoulder: 'whole',
      front: 'plain',
      centreFront,
      princess,
    })),
  ]),
];
const necklinesOf = ({ front }: { readonly front: string }): readonly string[] =>
  front === 'gathered' ? ['square'] : ['square', 'round', 'pointed', 'sweetheart'];

/** Every way to finish, and to sew on, what is drawn alike. */
const finishes = ['lined', 'faced'].flatMap((inside) =>
  ['back', 'side'].map((opening) => ({ inside, opening })),
);

/** Solves each sketch once: lining and opening leave the bodice as it is. */
function remembering(): Solver {
  const known = new Map<string, Solution>();
  return (sketch) => {
    const key = JSON.stringify(sketch);
    const solution = known.get(key) ?? solve(sketch);
    known.set(key, solution);
    return solution;
  };
}

/** Edges that nothing is sewn to and that are not turned. */
function rawEdges({ pieces, seams, sewing = [] }: Garment): readonly string[] {
  const worked = new Set(
    [
      ...seams.flatMap(({ a, b }) => [...a, ...b]),
      ...sewing.flatMap(({ turns = [], catches = [] }) => [...turns, ...catches]),
    ].map(({ piece, edge }) => `${piece}/${edge}`),
  );
  return pieces.flatMap(({ name, edges }) =>
    edges.flatMap(({ name: edge, turn }) =>
      turn === 'fold' || worked.has(`${name}/${edge}`) ? [] : [`${name}/${edge}`],
    ),
  );
}

describe.each(['leading-lady', 'wardrobe-mistress'])('for the %s', (name) => {
  const body = shippedBody(name);
  const cases = shapes.flatMap((shape) => necklinesOf(shape).map((neckline) => ({ ...shape, neckline })));

  it.each(cases)(
    'every finish is true and leaves no edge raw: $shoulder shoulder, $front front, $centreFront, princess $princess, $neckline',
    (shape) => {
      const solver = remembering();
      const draft = {
        ...dress,
        draw: (...[of, styling]: Parameters<typeof dress.draw>) => dress.draw(of, styling, solver),
      };
      for (const backNeckline of ['round', 'pointed'])
        for (const sleeve of ['puff', 'plain', 'none'])
          for (const finish of finishes) {
            const styling = { ...shape, backNeckline, sleeve, ...finish };
            const result = evaluate(draft, body, styling);
            const errors = (result.ok ? result.value.report.issues : result.issues).filter(
              ({ severity }) => severity === 'error',
            );
            const raw = result.ok ? rawEdges(result.value.garment) : [];
            expect({ styling, errors: errors.map(({ message }) => message), raw }).toEqual({
              styling,
              errors: [],
              raw: [],
            });
          }
    },
  );
});

describe('what cannot be chosen together', () => {
  it.each([
    [{ front: 'gathered', neckline: 'round' }, 'neckline'],
    [{ shoulder: 'whole', front: 'gathered', princess: 'armhole' }, 'princess'],
    [{ shoulder: 'strap', front: 'plain', princess: 'shoulder' }, 'princess'],
  ])('is refused by name, lined or faced: %o', (styling, path) => {
    for (const inside of ['lined', 'faced']) {
      const result = evaluate(dress, shippedBody('leading-lady'), { ...styling, inside });
      expect(
        result.issues.filter(({ severity }) => severity === 'error').map((issue) => issue.path),
      ).toContain(path);
    }
  });
});

describe('the bodice on its own', () => {
  it.each(shapes)(
    'is lined and faced too: $shoulder shoulder, $front front, $centreFront, princess $princess',
    (shape) => {
      for (const inside of ['lined', 'faced']) {
        const { report } = drafted('bodice', shippedBody('leading-lady'), { ...shape, inside });
        expect(report.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
      }
    },
  );
});
