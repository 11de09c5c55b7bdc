import { distance, type Point, point } from '../geometry/point.ts';
import type { Sketch, SketchPoint, SketchScalar } from './sketch.ts';

/**
 * Where the unknowns of a sketch usually come to lie, by name: a point along each axis, and a length, how far from where
 * the draft puts it first, mm; an angle how far it turns, degrees; of a handle the share of its chord that it takes.
 */
export interface Usual {
  readonly x: ReadonlyMap<string, number>;
  readonly y: ReadonlyMap<string, number>;
  readonly scalars: ReadonlyMap<string, number>;
}

/** What is usual, from a table in which a point's name is followed by its axis (`underarm x`). */
export function usualFrom(table: Readonly<Record<string, number>>): Usual {
  const usual = {
    x: new Map<string, number>(),
    y: new Map<string, number>(),
    scalars: new Map<string, number>(),
  };
  for (const [name, value] of Object.entries(table)) {
    if (name.endsWith(' x')) usual.x.set(name.slice(0, -2), value);
    else if (name.endsWith(' y')) usual.y.set(name.slice(0, -2), value);
    else usual.scalars.set(name, value);
  }
  return usual;
}

/**
 * A sketch with its unknowns where they usually come to lie, within their bounds. What must hold and what is wished for
 * stay as they are, so the answer does too; it is found in fewer steps.
 */
export function firstGuess(sketch: Sketch, usual: Usual): Sketch {
  const points = new Map<string, SketchPoint>();
  for (const [name, place] of sketch.points) {
    const { at, free } = place;
    const x = free === 'both' || free === 'x' ? (usual.x.get(name) ?? 0) : 0;
    const y = free === 'both' || free === 'y' ? (usual.y.get(name) ?? 0) : 0;
    points.set(name, free === 'none' ? place : { at: point(at.x + x, at.y + y), free });
  }
  const chords = chordsOf(sketch, (name) => points.get(name)?.at);
  const scalars = new Map<string, SketchScalar>();
  for (const [name, scalar] of sketch.scalars)
    scalars.set(name, scalar.free ? guessed(scalar, usual.scalars.get(name), chords.get(name)) : scalar);
  return { ...sketch, points, scalars };
}

/** The chord that each handle belongs to, mm. */
function chordsOf({ curves }: Sketch, place: (name: string) => Point | undefined): Map<string, number> {
  const chords = new Map<string, number>();
  for (const curve of curves.values()) {
    const [from, to] = [place(curve.from), place(curve.to)];
    if (curve.kind === 'line' || !from || !to) continue;
    const chord = distance(from, to);
    chords.set(curve.startLength, chord).set(curve.endLength, chord);
  }
  return chords;
}

function guessed(scalar: SketchScalar, usual: number | undefined, chord: number | undefined): SketchScalar {
  if (usual === undefined) return scalar;
  const { unit, min, max } = scalar;
  const off = unit === 'rad' ? (usual * Math.PI) / 180 : usual;
  const there = chord === undefined ? scalar.at + off : usual * chord;
  const at = Math.min(Math.max(there, min ?? -Infinity), max ?? Infinity);
  return min === undefined || max === undefined ? { ...scalar, at } : { at, unit, free: true, min, max };
}
