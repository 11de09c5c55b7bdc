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

// Much room at bust and waist and none between them: the princess lines cannot swing so far out, in, and out again.
const swung = { bustEase: 160, underBustEase: 0, waistEase: 120, underBustDrop: 40, princessOffset: -15 };

describe('a draft that cannot be solved on account of its styling', () => {
  const body = surveyBody(1);
  const issues = refused(body, swung);

  it('names the choices that stand in the way before any measurement', () => {
    expect(issues[0]?.code).toBe('styling-cannot-agree');
    expect(issues[0]?.message).toMatch(/instead of (160|0|120|40|-20)/);
  });

  it('can be drafted once the choices that it says would do are as usual', () => {
    const named = new Set(
      [...(issues[0]?.message ?? '').matchAll(/(\w+) \S+(?: mm)? instead of/g)].map(([, choice]) => choice),
    );
    const rest = Object.fromEntries(Object.entries(swung).filter(([choice]) => !named.has(choice)));
    expect(named.size).toBeGreaterThan(0);
    expect(Object.keys(rest)).toHaveLength(Object.keys(swung).length - named.size);
    expect(refused(body, rest)).toEqual([]);
  });

  it('takes no more than five drafts to refuse, however many choices there are to blame', () => {
    let drafts = 0;
    const counted: Draft = {
      ...bodice,
      draw: (...given) => {
        drafts += 1;
        return bodice.draw(...given);
      },
    };
    const many = {
      ...swung,
      strapWidth: 50,
      necklineDepth: 0.5,
      seamAllowance: 20,
      sideAllowance: 30,
      casingDepth: 25,
    };
    expect(evaluate(counted, body, many).ok).toBe(false);
    expect(drafts).toBeLessThanOrEqual(5);
  });

  it('takes no more than five drafts where the choices are not to blame, the one for a woman of middle size counted', () => {
    let drafts = 0;
    const stubborn: Draft = {
      ...bodice,
      draw: (read, styling, solver) => {
        drafts += 1;
        return bodice.draw(read, { ...styling, ...swung }, solver);
      },
    };
    const result = evaluate(stubborn, body, { strapWidth: 50, necklineDepth: 0.5, seamAllowance: 20 });
    expect(result.issues.find(({ severity }) => severity === 'error')?.code).toBe('cannot-agree');
    expect(drafts).toBeLessThanOrEqual(5);
  });

  it('does not blame choices where the body is the reason', () => {
    const impossible = { ...surveyBody(1), neckShoulderPointToBustPoint: 330, scyeDepth: 260 };
    expect(refused(impossible, { strapWidth: 50 }).map(({ code }) => code)).not.toContain(
      'styling-cannot-agree',
    );
  });
});
