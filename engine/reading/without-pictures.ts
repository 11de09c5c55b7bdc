/** A word of data longer than this is a picture, letters. */
const PICTURE = 1_000;

const closing: Readonly<Record<string, string>> = { '"': '"', "'": "'", '(': ')' };

/**
 * An SVG file's text without the pictures that stand in it as one long word each (data URLs, RFC 2397): a scan that
 * was traced over is most of the file, and no line of it is read.
 */
export function withoutPictures(svg: string): string {
  const kept: string[] = [];
  let from = 0;
  const ends = new Map<string, number>();
  // A mark found beyond one word is beyond the next as well: looked for from each, the file would be read once a word.
  const next = (mark: string, at: number): number => {
    const known = ends.get(mark) ?? 0;
    if (known < 0 || known > at) return known;
    const end = svg.indexOf(mark, at);
    ends.set(mark, end);
    return end;
  };
  for (let at = svg.indexOf('data:'); at >= 0; at = svg.indexOf('data:', at + 1)) {
    const mark = closing[svg[at - 1] ?? ''];
    const end = mark === undefined ? -1 : next(mark, at);
    if (end - at <= PICTURE) continue;
    kept.push(svg.slice(from, at), 'data:,');
    from = end;
    at = end;
  }
  return kept.join('') + svg.slice(from);
}
