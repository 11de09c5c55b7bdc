import type { Garment } from '../pattern/garment.ts';

/** What moves by less, mm, moved because a sketch was begun elsewhere. */
const NOISE = 0.005;

/** What of a garment may change with what it is drawn for: words, and the numbers between them. */
export interface GarmentShape {
  readonly words: string;
  readonly numbers: readonly number[];
}

/** Where the lines and marks of a garment lie, and what is bought for it: what a body may change. */
export function bodilyShape({ pieces, notions }: Garment): GarmentShape {
  const drawn = pieces.map(({ name, edges, notches, lines, marks }) => ({
    ...{ name, edges, notches, marks },
    lines: lines.map(({ curves }) => curves),
  }));
  const bought = notions.map(({ name, count, length }) => ({ name, count, length }));
  return shapeOf([drawn, bought]);
}

/** All of a garment but its name, its construction and what was chosen for it: what a choice may change. */
export const wholeShape = ({ name, choices, drawnFor, steps, ...rest }: Garment): GarmentShape =>
  shapeOf(rest);

function shapeOf(data: unknown): GarmentShape {
  const numbers: number[] = [];
  const taken = (_: string, value: unknown): unknown => {
    if (typeof value !== 'number') return value;
    numbers.push(value);
    return 0;
  };
  return { words: JSON.stringify(data, taken), numbers };
}

export const isAlike = (one: GarmentShape, other: GarmentShape): boolean =>
  one.words === other.words &&
  one.numbers.every((number, i) => Math.abs(number - (other.numbers[i] ?? 0)) <= NOISE);
