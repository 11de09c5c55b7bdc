import { expect } from 'vitest';
import type { Evaluation } from '../../engine/evaluate.ts';
import { edgeLength } from '../../engine/geometry/edge.ts';
import { drafted, edgeOf, pieceOf, shippedBody } from './drafted.ts';

/** The parts of a garment are solved as one: what is far from a change may still move by this, mm. */
export const elsewhere = 0.3;

/** The leading lady's dress before her fitting. */
export const before = drafted('dress', shippedBody('leading-lady'));

/** The same, fitted; lengths in her file are cm. */
export function fitted(...fitting: readonly Record<string, unknown>[]): Evaluation {
  const evaluation = drafted('dress', { ...shippedBody('leading-lady'), fitting });
  expect(evaluation.report.issues.filter(({ severity }) => severity === 'error')).toEqual([]);
  return evaluation;
}

/** Changes written in cm, in the units of another body's file. */
export function inUnitsOf(body: Record<string, unknown>, fitting: readonly Record<string, unknown>[]) {
  const perCm = { cm: 1, in: 1 / 2.54, mm: 10 }[String(body.units)] ?? 1;
  return fitting.map((change) =>
    Object.fromEntries(Object.entries(change).map(([k, v]) => [k, typeof v === 'number' ? v * perCm : v])),
  );
}

export const length = (of: Evaluation, piece: string, edge: string): number =>
  edgeLength(edgeOf(of, piece, edge));

/** How much longer an edge is than before the fitting, mm. */
export const longer = (after: Evaluation, piece: string, edge: string): number =>
  length(after, piece, edge) - length(before, piece, edge);

/** One half of the armhole, from the shoulder to the underarm, over whatever pieces it runs. */
export const armhole = (of: Evaluation, half: 'front' | 'back'): number =>
  of.garment.pieces
    .filter(({ name }) => name.endsWith(half) || name === `${half} strap`)
    .flatMap(({ edges }) => edges.filter(({ name }) => /^(armhole|outer)/.test(name)))
    .reduce((sum, edge) => sum + edgeLength(edge), 0);

export const notch = (of: Evaluation, piece: string, edge: string, name: string): number =>
  pieceOf(of, piece).notches.find((n) => n.edge === edge && n.name === name)?.at ?? Number.NaN;

export const girth = (of: Evaluation, level: string): number =>
  of.report.girths.find((g) => g.level === level)?.finished ?? Number.NaN;

export const codes = (of: Evaluation): readonly string[] => of.report.issues.map(({ code }) => code);
