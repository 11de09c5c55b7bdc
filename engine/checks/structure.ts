import type { Garment } from '../pattern/garment.ts';
import type { Piece } from '../pattern/piece.ts';
import type { EdgeRef, Girth, Join, Seam, SeamCorner } from '../pattern/seam.ts';
import type { SewingStep, State } from '../pattern/sewing.ts';

/** What a structure is told by. */
type Told = string | number | boolean | undefined;

/**
 * A garment in all but its measures: names, counts, what is sewn to what and in which order, and no place or length. One list of
 * plain values, each list in it with its count before it, so that two garments are put together alike where their lists are.
 */
export type Structure = readonly Told[];

/** The structure of a garment: all that is read by the checks that are told of in `known-structures.ts`. */
export function structureOf({ pieces, seams, joins, girths, notions, sewing }: Garment): Structure {
  const told: Told[] = [pieces.length, seams.length, joins.length, girths.length, notions.length];
  for (const piece of pieces) tellPiece(told, piece);
  for (const seam of seams) tellSeam(told, seam);
  for (const join of joins) tellJoin(told, join);
  for (const girth of girths) tellGirth(told, girth);
  for (const { name } of notions) told.push(name);
  told.push(sewing?.length);
  if (sewing) for (const step of sewing) tellStep(told, step);
  return told;
}

/** Whether two structures are the same. */
export function isSameStructure(one: Structure, other: Structure): boolean {
  if (one.length !== other.length) return false;
  for (let i = 0; i < one.length; i++) if (one[i] !== other[i]) return false;
  return true;
}

function tellPiece(told: Told[], { name, number, edges, notches, lines, marks, cut }: Piece): void {
  told.push(name, number, edges.length, notches.length, lines.length, marks.length, cut.length);
  for (const edge of edges)
    told.push(
      edge.name,
      edge.turn,
      edge.allowance > 0,
      edge.allowance === 0,
      edge.rank,
      edge.inflections,
      edge.open,
    );
  for (const notch of notches) told.push(notch.name, notch.edge, notch.mark);
  for (const line of lines) told.push(line.name, line.kind, line.girth);
  for (const { kind } of marks) told.push(kind);
  for (const { cloth, count, onFold, pair } of cut) told.push(cloth, count, onFold, pair);
}

function tellSeam(told: Told[], { name, a, b, gatherRatio, felled }: Seam): void {
  told.push(name, gatherRatio > 1, gatherRatio === 1, felled);
  tellEdges(told, a);
  tellEdges(told, b);
}

function tellEdges(told: Told[], refs: readonly EdgeRef[] | undefined): void {
  told.push(refs?.length);
  if (refs) for (const { piece, edge, reversed } of refs) told.push(piece, edge, reversed);
}

function tellJoin(told: Told[], join: Join): void {
  told.push(join.name, join.kind);
  if (join.kind === 'along') {
    told.push(join.piece, join.from, join.to);
    return;
  }
  tellCorner(told, join.a);
  if (join.kind === 'across') tellCorner(told, join.b);
}

const tellCorner = (told: Told[], { piece, edge, seam }: SeamCorner): number => told.push(piece, edge, seam);

function tellGirth(told: Told[], { level, parts }: Girth): void {
  told.push(level, parts.length);
  for (const part of parts) told.push(part.kind, part.piece, part.kind === 'line' ? part.line : part.edge);
}

function tellStep(told: Told[], step: SewingStep): void {
  told.push(step.title, step.finish !== undefined);
  tellNames(told, step.sews);
  tellNames(told, step.presses);
  tellNames(told, step.uses);
  tellEdges(told, step.turns);
  tellEdges(told, step.catches);
  tellStates(told, step.needs);
  tellStates(told, step.brings);
  tellStates(told, step.closes);
}

function tellNames(told: Told[], names: readonly string[] | undefined): void {
  told.push(names?.length);
  if (names) for (const name of names) told.push(name);
}

function tellStates(told: Told[], states: readonly State[] | undefined): void {
  told.push(states?.length);
  if (states) for (const { piece, is, at } of states) told.push(piece, is, at);
}
