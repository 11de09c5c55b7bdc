import { describe, expect, it } from 'vitest';
import { type Body, measurementNames } from '../../../engine/body/body.ts';
import { readBody } from '../../../engine/body/read.ts';
import { SketchBuilder } from '../../../engine/constraints/sketch-builder.ts';
import { solve } from '../../../engine/constraints/solve.ts';
import type { Draft } from '../../../engine/pattern/draft.ts';
import type { PieceEdge } from '../../../engine/pattern/piece.ts';
import { perMm, type Sensitivity, sensitivities } from '../../../engine/sensitivity/sensitivity.ts';
import { bib, measurements } from '../bib.ts';
import { smallGarment } from '../render/small-garment.ts';

function bodyOf(data: unknown): Body {
  const read = readBody(data);
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join('\n'));
  return read.value;
}

const body = bodyOf(measurements);

/**
 * A kerchief: a triangle whose hypotenuse is the neck girth and whose legs are the hip girth, but drawn only where
 * the waist is smaller than the body's own.
 */
const kerchief: Draft = {
  name: 'kerchief',
  title: 'A kerchief',
  choices: [],
  shapedBy: ['neckBaseGirth', 'hipGirth'],
  draw: ({ size }, _styling, solver = solve) => {
    if (size.waistGirth > body.size.waistGirth)
      return {
        ok: false,
        issues: [{ code: 'own-too-wide', severity: 'error', path: '', message: 'Too wide.' }],
      };
    const draw = new SketchBuilder();
    draw.fixed('left', { x: 0, y: 0 });
    draw.fixed('right', { x: size.neckBaseGirth, y: 0 });
    draw.point('tip', { x: 100, y: 300 });
    draw.relation(
      { kind: 'distance', name: 'left leg', a: 'left', b: 'tip', mm: size.hipGirth },
      { kind: 'distance', name: 'right leg', a: 'right', b: 'tip', mm: size.hipGirth },
    );
    draw.line('hypotenuse', 'left', 'right');
    draw.line('right leg', 'right', 'tip');
    draw.line('left leg', 'tip', 'left');
    draw.fixed('half', { x: size.neckBaseGirth / 2, y: 0 });
    draw.line('height', 'half', 'tip');
    draw.line('waist', 'left', 'half');
    const { curves, status } = solver(draw.sketch());
    if (status !== 'solved') throw new Error('not solved');
    const edges = Object.entries(curves).map(
      ([name, curve]): PieceEdge => ({
        name,
        curves: [curve],
        turn: 'hem',
        allowance: 0,
        rank: 0,
        inflections: 0,
      }),
    );
    const [piece] = smallGarment.pieces;
    if (!piece) throw new Error('no piece');
    const pieces = [{ ...piece, name: 'kerchief', edges, notches: [], lines: [] }];
    return {
      ok: true,
      value: { ...smallGarment, pieces, seams: [], joins: [], girths: [] },
      issues: [],
    };
  },
};

function found(draft: Draft): readonly Sensitivity[] {
  const answer = sensitivities(draft, body, { misfit: 0, mood: 'good' });
  if (!answer.ok) throw new Error('not drafted');
  return answer.value;
}

const slopeOf = (all: readonly Sensitivity[], measurement: string, edge: string): number | undefined =>
  all
    .find((one) => one.measurement === measurement)
    ?.slopes.find(({ kind, name }) => kind === 'edge' && name === edge)?.perMm;

describe('sensitivities', () => {
  it('say nothing moves in a garment that no measurement shapes', () => {
    const all = found(bib);
    expect(all.map(({ measurement }) => measurement)).toEqual(measurementNames);
    for (const { slopes } of all) {
      expect(slopes.length).toBeGreaterThan(0);
      for (const { perMm: moved } of slopes) expect(moved).toBe(0);
    }
  });

  it('give the derivatives of a right-angled height: leg / height, and -base / (4 height)', () => {
    const all = found(kerchief);
    const { hipGirth: leg, neckBaseGirth: base } = body.size;
    const height = Math.sqrt(leg * leg - (base * base) / 4);
    expect(slopeOf(all, 'hipGirth', 'height')).toBeCloseTo(leg / height, 6);
    expect(slopeOf(all, 'neckBaseGirth', 'height')).toBeCloseTo(-base / (4 * height), 6);
    expect(slopeOf(all, 'neckBaseGirth', 'hypotenuse')).toBeCloseTo(1, 9);
    expect(slopeOf(all, 'stature', 'height')).toBeCloseTo(0, 9);
  });

  it('are taken from one side where the draft refuses the other', () => {
    expect(slopeOf(found(kerchief), 'waistGirth', 'height')).toBeCloseTo(0, 9);
  });

  it('fail with the issues of the draft', () => {
    const answer = sensitivities(bib, body, { misfit: 0, mood: 'bad' });
    expect(answer.ok).toBe(false);
    expect(answer.issues.map(({ code }) => code)).toEqual(['own-no-bib']);
  });

  it('count an angle by how far it lowers the end of the shoulder', () => {
    expect(perMm(body, 'shoulderSlope') * body.size.shoulderLength).toBe(1);
    expect(perMm(body, 'bustGirth')).toBe(1);
  });
});
