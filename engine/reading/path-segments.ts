import svgpath from 'svgpath';

/** A step of a path, absolute: its letter (M, L, H, V, C, Q, A or Z) and its numbers. */
export type Segment = readonly [letter: string, ...numbers: number[]];

/** No more signs than this stand for each number of a path. */
const MOST_SIGNS = 40;

/**
 * The steps of a path's `d` attribute, none relative and none shortened; a reason when it cannot be read or holds more
 * than `most` numbers.
 */
export function pathSegments(d: string, most: number): readonly Segment[] | string {
  if (d.length > MOST_SIGNS * most) return 'it is too long';
  const path = svgpath(d).abs().unshort();
  // What is wrong it keeps to itself, and its types do not know of it.
  if ('err' in path && typeof path.err === 'string' && path.err !== '')
    return `“${path.err.replace(/^SvgPath: /, '')}”`;
  const segments: Segment[] = [];
  let count = 0;
  path.iterate(([letter, ...numbers]) => {
    segments.push([letter, ...numbers.map(Number)]);
    count += numbers.length;
  });
  if (count > most) return 'it is too long';
  for (const [letter, ...numbers] of segments) {
    if (letter === 'R') return 'it holds the command “R”';
    if (!numbers.every((value) => Math.abs(value) <= 1e6)) return 'it holds a number that is too large';
  }
  return segments;
}
