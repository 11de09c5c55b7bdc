import { describe, expect, it } from 'vitest';
import { dress } from '../../../drafts/dress.ts';
import { evaluate } from '../../../engine/evaluate.ts';
import { plausibleBodies } from '../../plausible-bodies.ts';
import { drafted, figureOf, shippedBodies, shippedBody } from '../drafted.ts';

const set = { shoulder: 'whole', front: 'plain', sleeve: 'plain' } as const;

const errorsOf = ({ report }: ReturnType<typeof drafted>) =>
  report.issues.filter(({ severity }) => severity === 'error').map(({ message }) => message);

describe('the room of a plain sleeve', () => {
  it('is 50 mm where the crown can span that', () => {
    const made = drafted('dress', shippedBody('leading-lady'), set);
    expect(figureOf(made, 'fitted sleeve wider than the arm')).toBeCloseTo(50, 6);
  });

  // Their arms were measured flexed, and so are fuller than those that armholes are drawn for.
  const fullArms = plausibleBodies(60).filter((_, i) => [9, 12, 15, 25, 37, 47, 49].includes(i));

  it.each(fullArms)('is less for an arm that is full for its armhole, and drawn true: $name', (body) => {
    const made = drafted('dress', body, set);
    expect(errorsOf(made)).toEqual([]);
    const room = figureOf(made, 'fitted sleeve wider than the arm');
    expect(room).toBeGreaterThanOrEqual(20 - 1e-6);
    expect(room).toBeLessThan(50);
  });

  it('is as chosen, or refused', () => {
    const [body] = fullArms;
    expect(() => drafted('dress', body, { ...set, upperArmEase: 50 })).toThrow(/cannot|exclude/i);
  });
});

describe('a plain sleeve to the wrist', () => {
  const cases = shippedBodies.flatMap((name) => [undefined, 20, 80, 120].map((ease) => ({ name, ease })));

  it.each(cases)(
    'turns no more than twice at the elbow, however wide it begins: $name, $ease',
    ({ name, ease }) => {
      const wide = ease === undefined ? {} : { upperArmEase: ease };
      const made = evaluate(dress, shippedBody(name), { sleeve: 'plain', sleeveTo: 'wrist', ...wide });
      if (made.ok) expect(errorsOf(made.value)).toEqual([]);
      else expect(made.issues.map(({ code }) => code)).toEqual(['styling-cannot-agree']);
    },
  );
});
