/** Numbers that are none of them whole, so that V8 keeps the list as doubles. */
const pattern: readonly number[] = new Array<number>(1024).fill(0.5);

/**
 * A list with room for so many numbers, to be written over. A list that is made empty is made for whole numbers, and again for
 * doubles when the first is written into it; a copy of doubles is doubles from the start (Node 20). A Float64Array takes ten times as
 * long to come by.
 */
export const roomForNumbers = (count: number): number[] =>
  count <= pattern.length ? pattern.slice(0, count) : new Array<number>(count).fill(0.5);
