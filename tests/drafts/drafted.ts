import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { garments } from '../../drafts/garments.ts';
import { type Evaluation, evaluate } from '../../engine/evaluate.ts';
import type { Point } from '../../engine/geometry/point.ts';
import type { Piece, PieceEdge } from '../../engine/pattern/piece.ts';

/** The eight bodies that ship, by file name. */
export const shippedBodies = [
  'front-of-house',
  'leading-lady',
  'lighting-operator',
  'prompter',
  'scene-painter',
  'stage-manager',
  'understudy',
  'wardrobe-mistress',
] as const;

/** The data of a shipped body file. */
export function shippedBody(name: string): Record<string, unknown> {
  const data: unknown = parse(
    readFileSync(new URL(`../../measurements/${name}.yaml`, import.meta.url), 'utf8'),
  );
  return data as Record<string, unknown>;
}

/** A garment drafted for body data; throws with the issues where it cannot be. */
export function drafted(garment: string, body: unknown, styling?: unknown): Evaluation {
  const draft = garments.find((candidate) => candidate.name === garment);
  if (!draft) throw new Error(`no garment ${garment}`);
  const result = evaluate(draft, body, styling);
  if (!result.ok) throw new Error(result.issues.map((issue) => issue.message).join('\n'));
  return result.value;
}

export function pieceOf({ garment }: Evaluation, name: string): Piece {
  const piece = garment.pieces.find((candidate) => candidate.name === name);
  if (!piece) throw new Error(`no piece ${name}`);
  return piece;
}

export function edgeOf(evaluation: Evaluation, piece: string, edge: string): PieceEdge {
  const found = pieceOf(evaluation, piece).edges.find((candidate) => candidate.name === edge);
  if (!found) throw new Error(`no edge ${edge} on ${piece}`);
  return found;
}

/** A point that a step of the construction places on a drawing, such as `front`, before the dart is closed. */
export function placedOn({ garment }: Evaluation, drawing: string, name: string): Point {
  const points = garment.steps.flatMap(({ draws }) => draws?.points ?? []);
  const point = points.find((candidate) => candidate.on === drawing && candidate.name === name);
  if (!point) throw new Error(`no point ${name} on the ${drawing}`);
  return point.at;
}

/** A figure a pattern cutter looks at, as it was measured. */
export function figureOf({ report }: Evaluation, name: string): number {
  const shape = report.shapes.find((candidate) => candidate.name === name);
  if (!shape) throw new Error(`no shape ${name}`);
  return shape.value;
}

/** What a step of the construction came to, in mm or radians. */
export function stepOf({ garment }: Evaluation, title: string): number {
  const value = garment.steps.find((step) => step.title === title)?.value;
  if (value === undefined) throw new Error(`no number in step ${title}`);
  return value;
}
