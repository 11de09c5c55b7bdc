import type { Side } from '../body/side.ts';
import { edgeLength } from '../geometry/edge.ts';
import { outlineBounds } from '../geometry/outline.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Girth } from '../pattern/seam.ts';
import { asPair, leftAndRight } from './panel.ts';
import type { Stand } from './stand.ts';

export type LevelName = keyof Stand['levels'];

export const levelNames: readonly LevelName[] = ['bust', 'under-bust', 'waist', 'hip'];

/** Where a panel crosses a level: at which y, between which x, and which stretch of half the girth it covers, from the back. */
export interface LevelCrossing {
  readonly level: LevelName;
  readonly y: number;
  readonly left: number;
  readonly right: number;
  /** Shares of half the girth at `left` and at `right`; 0 is the centre back, 1 the centre front. */
  readonly atLeft: number;
  readonly atRight: number;
}

/** Where every piece crosses the levels whose finished girth the garment states, from the top down. */
export function crossingsOf(garment: Garment): ReadonlyMap<string, readonly LevelCrossing[]> {
  if (garment.pieces.every(({ oneOf }) => !oneOf)) return crossingsAlike(garment);
  return new Map(leftAndRight.flatMap((side) => [...crossingsAlike(asOnBoth(garment, side))]));
}

/** A garment as if both its sides were like one of them: its pieces of that side are there twice, as their pairs are drawn. */
function asOnBoth(garment: Garment, side: Side): Garment {
  const other = new Set(
    garment.pieces.flatMap(({ name, oneOf }) => (oneOf && oneOf.side !== side ? [name] : [])),
  );
  const single = new Set(garment.pieces.flatMap(({ name, oneOf }) => (oneOf ? [name] : [])));
  return {
    ...garment,
    pieces: garment.pieces.filter(({ name }) => !other.has(name)).map(asPair),
    seams: garment.seams.filter(({ a, b }) => ![...a, ...b].some(({ piece }) => other.has(piece))),
    girths: garment.girths.map((girth) => ({
      ...girth,
      parts: girth.parts
        .filter(({ piece }) => !other.has(piece))
        .map((part) => (single.has(part.piece) ? { ...part, times: 2 * part.times } : part)),
    })),
  };
}

function crossingsAlike(garment: Garment): ReadonlyMap<string, readonly LevelCrossing[]> {
  const found = new Map<string, LevelCrossing[]>();
  for (const level of levelNames) {
    const girth = garment.girths.find((each) => each.level === level);
    if (!girth) continue;
    for (const [piece, crossing] of alongGirth(garment, level, girth, found)) {
      const known = found.get(piece);
      if (known) known.push(crossing);
      else found.set(piece, [crossing]);
    }
  }
  for (const crossings of found.values()) crossings.sort((a, b) => a.y - b.y);
  return found;
}

interface GirthStretch {
  readonly piece: string;
  /** Of half the girth, mm. */
  readonly length: number;
  readonly y: number;
  readonly left: number;
  readonly right: number;
}

function alongGirth(
  garment: Garment,
  level: LevelName,
  { parts }: Girth,
  above: ReadonlyMap<string, readonly LevelCrossing[]>,
): readonly (readonly [string, LevelCrossing])[] {
  const stretches = new Map<string, GirthStretch>();
  for (const part of parts) {
    const piece = garment.pieces.find(({ name }) => name === part.piece);
    const line = part.kind === 'line' ? piece?.lines.find(({ name }) => name === part.line) : undefined;
    const edge = part.kind === 'edge' ? piece?.edges.find(({ name }) => name === part.edge) : undefined;
    const curves = line?.curves ?? edge?.curves;
    if (!curves) continue;
    const { left, right, top, bottom } = outlineBounds([{ name: level, curves }]);
    const length = ((edgeLength({ name: level, curves }) - (line?.fullness ?? 0)) * part.times) / 2;
    const known = stretches.get(part.piece);
    const y = (top + bottom) / 2;
    stretches.set(part.piece, {
      piece: part.piece,
      length: length + (known?.length ?? 0),
      y: known?.y ?? y,
      left: Math.min(part.times === 1 ? 0 : left, known?.left ?? Infinity),
      right: Math.max(right, known?.right ?? -Infinity),
    });
  }
  // Girths are listed from the back to the front, but for one that goes on from the front of what is above it.
  const [first] = stretches.keys();
  const listed = [...stretches.values()];
  if (first !== undefined && goesOnInFront(garment, first, above)) listed.reverse();
  const total = listed.reduce((sum, { length }) => sum + length, 0);
  let walked = 0;
  return listed.map(({ piece, length, y, left, right }) => {
    // Behind, pieces are drawn from the centre outward, in front the other way.
    const behind = walked + length / 2 < total / 2;
    const [from, to] = [walked / total, (walked + length) / total];
    walked += length;
    return [
      piece,
      { level, y, left, right, atLeft: behind ? from : to, atRight: behind ? to : from },
    ] as const;
  });
}

/** Whether a piece that crosses no level above is sewn to one that lies in front. */
function goesOnInFront(
  { seams }: Garment,
  piece: string,
  above: ReadonlyMap<string, readonly LevelCrossing[]>,
): boolean {
  if (above.has(piece)) return false;
  const beside = seams.flatMap(({ a, b }) => {
    const pieces = [...a, ...b].map((ref) => ref.piece);
    return pieces.includes(piece) ? pieces : [];
  });
  return beside.some((name) => {
    const last = above.get(name)?.at(-1);
    return last !== undefined && last.atLeft + last.atRight > 1;
  });
}
