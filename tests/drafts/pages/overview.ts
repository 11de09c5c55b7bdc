import type { Evaluation } from '../../../engine/evaluate.ts';
import { boundingBox } from '../../../engine/geometry/bounds.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import { type Point, point } from '../../../engine/geometry/point.ts';
import { transformedCurve } from '../../../engine/geometry/transform.ts';
import type { Piece } from '../../../engine/pattern/piece.ts';
import { type Size, standInRows } from '../../../engine/render/layout.ts';
import { pathData } from '../../../engine/render/path-data.ts';
import { textWidth } from '../../../engine/render/text-size.ts';

/** What a reader of a page sees without scrolling, in pixels. */
const room: Size = { width: 900, height: 700 };
const gap = 14;
const lettering = 12;
const lineStep = 14;

/** A piece with its cutting line, and the words below it. */
interface Shown {
  readonly piece: Piece;
  readonly cut: readonly Curve[];
  readonly corner: Point;
  readonly size: Size;
  readonly words: readonly string[];
}

/** All pieces of a garment side by side, as large as a page of prose has room for: a picture to look at, not to cut from. */
export function overview({ garment, cutLines }: Evaluation): string {
  const shown = garment.pieces.map((piece): Shown => {
    const cut = cutLines.get(piece.name)?.curves ?? [];
    const { left, top, right, bottom } = boundingBox(cut);
    const size = { width: right - left, height: bottom - top };
    return {
      piece,
      cut,
      corner: point(left, top),
      size,
      words: [`${piece.number}`, ...piece.name.split(' ')],
    };
  });
  const { scale, cells, corners, paper } = arranged(shown);
  const drawn = shown.map(({ piece, cut, corner, size, words }, i) => {
    const cell = corners[i] ?? corner;
    const middle = cell.x + (cells[i]?.width ?? 0) / 2;
    const place = (p: Point): Point =>
      point(
        tenths(middle + (p.x - corner.x - size.width / 2) * scale),
        tenths(cell.y + (p.y - corner.y) * scale),
      );
    const path = (of: string, curves: readonly Curve[], closed: boolean): string =>
      `<path class="${of}" d="${pathData(
        curves.map((curve) => transformedCurve(curve, place)),
        closed,
      )}"/>`;
    const edges = piece.edges.flatMap(({ curves }) => curves);
    const lines = piece.lines.map(({ curves }) => path('inside', curves, false));
    const grain: Curve = { kind: 'line', from: piece.grain.from, to: piece.grain.to };
    const below = cell.y + size.height * scale;
    const said = linesOf(words, cells[i]?.width ?? 0).map(
      (line, n) => `<text x="${tenths(middle)}" y="${tenths(below + lineStep * (n + 1))}">${line}</text>`,
    );
    return [
      path('cut', cut, true),
      path('stitch', edges, true),
      ...lines,
      path('grain', [grain], false),
      ...said,
    ].join('');
  });
  const title = `The pieces of the ${garment.name} for ${garment.body}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${Math.ceil(paper.width)}" height="${Math.ceil(paper.height)}" viewBox="0 0 ${Math.ceil(paper.width)} ${Math.ceil(paper.height)}">
<title>${title}</title>
<style>${style}</style>
<rect width="100%" height="100%" fill="#fff"/>
${drawn.map((piece) => `<g>${piece}</g>`).join('\n')}
</svg>
`;
}

const style =
  'path{fill:none;stroke:#222;stroke-linejoin:round}.cut{fill:#f4efe6;stroke-width:1.2}.stitch{stroke-width:.6;stroke-dasharray:4 2}.inside{stroke:#888;stroke-width:.5}.grain{stroke:#a33;stroke-width:.7}' +
  `text{font:${lettering}px sans-serif;text-anchor:middle;fill:#222}`;

/** A tenth of a pixel is finer than any eye. */
const tenths = (pixels: number): number => Math.round(pixels * 10) / 10;

/** The largest scale at which all stand in the room, found by making them smaller step by step. */
function arranged(shown: readonly Shown[]) {
  for (let scale = 1; ; scale *= 0.99) {
    const cells = shown.map(({ size, words }): Size => {
      const longest = Math.max(...words.map((word) => textWidth(word, lettering)));
      const width = Math.max(size.width * scale, longest + 4);
      return { width, height: size.height * scale + lineStep * linesOf(words, width).length + 4 };
    });
    const { corners, paper } = standInRows(cells, room.width, gap);
    if (paper.width <= room.width && paper.height <= room.height) return { scale, cells, corners, paper };
  }
}

/** Words in lines that are no wider than their piece. */
function linesOf(words: readonly string[], width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of words) {
    const longer = `${lines.at(-1) ?? ''} ${word}`.trim();
    if (lines.length > 0 && textWidth(longer, lettering) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
