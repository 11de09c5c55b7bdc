import { cuttingLines } from '../finishing/cut-lines.ts';
import { evenPoints } from '../geometry/chords.ts';
import type { Curve, Edge } from '../geometry/curve.ts';
import { point } from '../geometry/point.ts';
import { roughLength } from '../geometry/rough-length.ts';
import { PARALLEL } from '../geometry/tolerance.ts';
import type { Issue } from '../issue.ts';
import type { Garment } from '../pattern/garment.ts';
import { inMm } from '../text/figure.ts';
import { type DrawnCurves, drawn, nearest } from './nearest.ts';

/** Chords this near their curves take little from the bound, mm. */
const FINE = 0.005;

/** Places looked at lie no farther apart than this, mm: a number of a line moves more of it than that. */
const SPACING = 4;

/**
 * Two cutting lines of one piece may lie this far apart, mm: each strays from the true parallel by `PARALLEL`, and other
 * programs write three digits.
 */
const APART = 3 * PARALLEL;

/**
 * Makes the cutting lines of a garment anew from its stitching lines, and compares what is drawn with them, both ways:
 * allowances alone leave open how far out a corner is cut. One issue a piece, for its worst place.
 */
export function cutAsMade(garment: Garment, cutLines: ReadonlyMap<string, Edge>): Issue[] {
  const made = cuttingLines(garment, PARALLEL);
  return garment.pieces.flatMap(({ name }): Issue[] => {
    const [cut, anew] = [cutLines.get(name), made.get(name)];
    if (!cut || !anew || cut.curves.length === 0) return [];
    const value = Math.max(strays(cut, anew), strays(anew, cut));
    if (value <= APART) return [];
    const message = `The cutting line of ${name} lies up to ${inMm(value)} aside of where its stitching line and allowances put it.`;
    return [
      {
        code: 'cutting-line-moved',
        severity: 'error',
        path: name,
        message,
        value,
        limits: { min: 0, max: APART, unit: 'mm' },
      },
    ];
  });
}

/** How far one line strays from another at the most, mm. */
function strays(line: Edge, from: Edge): number {
  const known = drawn(from.curves, FINE);
  return Math.max(0, ...line.curves.map((curve) => straysAlong(curve, known)));
}

function straysAlong(curve: Curve, known: DrawnCurves): number {
  const places = evenPoints(curve, Math.max(1, Math.ceil(roughLength(curve) / SPACING)));
  let most = 0;
  for (let i = 0; i < places.length; i += 2) {
    const p = point(places[i] as number, places[i + 1] as number);
    most = Math.max(most, nearest(known, p, Number.POSITIVE_INFINITY)?.distance ?? 0);
  }
  return most;
}
