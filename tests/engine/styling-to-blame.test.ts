import { describe, expect, it } from 'vitest';
import { garments } from '../../drafts/garments.ts';
import { evaluate } from '../../engine/evaluate.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { surveyBody } from '../plausible-bodies.ts';

const bodice = garments.find(({ name }) => name === 'bodice') as Draft;

const refused = (body: unknown, styling: object) => {
  const result = evaluate(bodice, body, styling);
  return result.ok ? [] : result.issues.filter(({ severity }) => severity === 'error');
};

// A wide strap so far out leaves the armhole of a small woman no room to hollow out with a wide allowance.
const tight = {
  strapWidth: 60,
  strapPosition: 60,
  necklineWidth: 1.35,
  armholeAllowance: 25,
  necklineDepth: 0.75,
};

describe('a draft that cannot be solved on account of its styling', () => {
  const [body, issues] = Array.from({ length: 40 }, (_, i) => surveyBody(i + 1))
    .map((each) => [each, refused(each, tight)] as const)
    .find(([, found]) => found.length > 0) ?? [{}, []];

  it('names the choices that stand in the way before any measurement', () => {
    expect(issues[0]?.code).toBe('styling-cannot-agree');
    expect(issues[0]?.message).toMatch(/instead of (60|1\.35|25|0\.75)/);
  });

  it('can be drafted once a named choice is as usual', () => {
    const name = issues[0]?.path ?? '';
    const rest = Object.fromEntries(Object.entries(tight).filter(([choice]) => choice !== name));
    expect(refused(body, rest)).toEqual([]);
  });

  it('does not blame choices where the body is the reason', () => {
    const impossible = { ...surveyBody(1), neckShoulderPointToBustPoint: 330, scyeDepth: 260 };
    expect(refused(impossible, { strapWidth: 50 }).map(({ code }) => code)).not.toContain(
      'styling-cannot-agree',
    );
  });
});
