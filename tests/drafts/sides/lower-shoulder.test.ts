import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { garments } from '../../../drafts/garments.ts';
import { withSize } from '../../../engine/body/with-size.ts';
import { follow } from '../../../engine/constraints/sensitivity.ts';
import type { Solution } from '../../../engine/constraints/solution.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import { edgeLength } from '../../../engine/geometry/edge.ts';
import { walkSheet } from '../../../engine/reading/walk-sheet.ts';
import { sheetSvg } from '../../../engine/render/sheet.ts';
import { plausibleBody } from '../../plausible-bodies.ts';
import { drafted, edgeOf, figureOf, pieceOf, shippedBodies } from '../drafted.ts';
import { evaluated } from '../points.ts';
import { errorsOf, fittedBody, fittedDress } from './sided.ts';

const plain = fittedDress();

const lower = fittedDress({ 'lower shoulder': 1, side: 'left' });

const shapes = ({ report }: typeof plain): readonly string[] => report.shapes.map(({ name }) => name);

const names = ({ garment }: typeof plain): readonly string[] => garment.pieces.map(({ name }) => name);

describe('a shoulder that is lower on one side', () => {
  it.each(shippedBodies)('keeps every check true for the %s, on either side', (name) => {
    for (const [side, cm] of [
      ['left', 0.5],
      ['left', 2],
      ['left', 1],
      ['right', 1],
    ]) {
      const fitted = drafted('dress', fittedBody(name, { 'lower shoulder': cm, side }));
      expect(errorsOf(fitted), `${side} ${cm}`).toEqual([]);
      expect(names(fitted)).toEqual(expect.arrayContaining([`${side} front strap`, `${side} back strap`]));
    }
  });

  it('is measured on both sides where they differ: the armholes and the straps, not the waist', () => {
    const cap = 'cap on front armhole';
    expect(shapes(plain)).toContain(cap);
    expect(shapes(lower)).toEqual(expect.arrayContaining([`right ${cap}`, `left ${cap}`]));
    expect(shapes(lower)).not.toContain(cap);
    expect(shapes(lower)).toContain('waist at centre front below the princess seam');
    const armhole = (side: string): number => figureOf(lower, `${side} armhole girth`);
    expect(armhole('right')).toBeCloseTo(figureOf(plain, 'armhole girth'), 4);
    expect(Math.abs(armhole('left') - armhole('right'))).toBeGreaterThan(1);
  });

  it('keeps every check true, beside wedges too, or is refused by name where the armhole has no room for it', () => {
    fc.assert(
      fc.property(
        plausibleBody,
        fc.constantFrom('left', 'right'),
        fc.constantFrom(5, 10, 20),
        (body, side, mm) => {
          const wedges = [{ 'wedge from armhole': 5 }, { 'wedge from back armhole': 5 }];
          const result = evaluated('bodice', {
            ...body,
            fitting: [{ 'lower shoulder': mm, side }, ...wedges],
          });
          if (result.ok) expect(errorsOf(result.value)).toEqual([]);
          else if (evaluated('bodice', { ...body, fitting: wedges }).ok)
            expect(result.issues.map(({ message }) => message).join('\n')).toContain('lower shoulder');
        },
      ),
      { numRuns: 25, endOnFailure: true },
    );
  });

  it('is true on the written sheet too, read back from its paths', () => {
    const walked = walkSheet(sheetSvg(lower.garment, lower.cutLines));
    expect(walked.ok && walked.value.issues).toEqual([]);
  });

  it('shortens the strap of that side, and brings the sleeve with it', () => {
    const strap = (of: typeof plain, name: string): number => edgeLength(edgeOf(of, name, 'outer'));
    for (const part of ['front strap', 'back strap']) {
      expect(strap(lower, `right ${part}`)).toBeCloseTo(strap(plain, part), 9);
      expect(strap(lower, `left ${part}`)).toBeLessThan(strap(plain, part) - 3);
    }
    const crown = (of: typeof plain, name: string): number => edgeLength(edgeOf(of, name, 'crown'));
    expect(crown(lower, 'right sleeve')).toBeCloseTo(crown(plain, 'sleeve'), 4);
    expect(crown(lower, 'left sleeve')).toBeLessThan(crown(plain, 'sleeve') - 4);
  });

  it('leaves neckline, insert and all that is cut at the centre exactly as they were', () => {
    for (const name of ['centre front', 'insert', 'centre back', 'skirt centre front', 'skirt side back']) {
      const { number: _, ...now } = pieceOf(lower, name);
      expect(pieceOf(plain, name)).toMatchObject(now);
    }
    const upper = (of: typeof plain, name: string): number => edgeLength(edgeOf(of, name, 'princess upper'));
    expect(upper(lower, 'left side front')).toBeCloseTo(upper(plain, 'side front'), 9);
  });

  it('is logged for its side, with what follows from it', () => {
    const titles = lower.garment.steps.map(({ title }) => title);
    expect(titles).toContain('On the left: Fitting, back shoulder slope');
    for (const side of ['left', 'right'])
      expect(titles).toEqual(expect.arrayContaining([`On the ${side}: Straps`, `On the ${side}: Armhole`]));
    expect(lower.garment.steps.map(({ number }) => number)).toEqual(titles.map((_, i) => i + 1));
  });

  it('is said to change nothing on a skirt, once', () => {
    const skirt = drafted('skirt', fittedBody('leading-lady', { 'lower shoulder': 1, side: 'left' }));
    expect(skirt.garment.pieces).toEqual(drafted('skirt', fittedBody('leading-lady')).garment.pieces);
    const messages = skirt.report.issues.map(({ message }) => message);
    expect(messages).toEqual([
      '"lower shoulder on the left" changes nothing here: this garment has no side front.',
    ]);
  });
});

describe('a dress of two sides', () => {
  it('can be followed from its solutions to a body near by', () => {
    const dress = garments.find(({ name }) => name === 'dress');
    if (!dress) throw new Error('no dress');
    const solutions: Solution[] = [];
    const drawn = dress.draw(lower.body, lower.styling, (sketch) => {
      const solution = solve(sketch);
      solutions.push(solution);
      return solution;
    });
    const near = withSize(lower.body, 'bustGirth', lower.body.size.bustGirth + 0.05);
    const rest = [...solutions];
    const followed = dress.draw(near, lower.styling, (sketch) => {
      const from = rest.shift();
      return from ? follow(sketch, from) : solve(sketch);
    });
    const piecesOf = (result: typeof drawn) => (result.ok ? result.value.pieces.map(({ name }) => name) : []);
    expect(piecesOf(followed)).toEqual(names(lower));
    expect(piecesOf(drawn)).toEqual(names(lower));
  });
});

describe('a change on one side that cannot be drafted', () => {
  it('is blamed with its side', () => {
    const { ok, issues } = evaluated(
      'dress',
      fittedBody(
        'leading-lady',
        { 'shorten strap': 5, side: 'left' },
        { 'lower shoulder': 1, side: 'right' },
      ),
    );
    const messages = issues.map(({ message }) => message).join('\n');
    expect(ok).toBe(false);
    expect(messages).toContain('"shorten strap on the left"');
    expect(messages).toContain('On the left side: The fitting leaves only');
    expect(messages).not.toContain('lower shoulder on the right');
  });
});
