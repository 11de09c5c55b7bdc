import { boundingBox } from '../../geometry/bounds.ts';
import { type Point, point } from '../../geometry/point.ts';
import { transformedCurve } from '../../geometry/transform.ts';
import { readMarkup } from '../../reading/read-markup.ts';
import { readChains } from '../../reading/read-path.ts';
import type { Picture, PictureLine } from '../../render/booklet/picture.ts';
import type { DrawnKind } from './drawn-lines.ts';

/** How each kind of line is drawn in a booklet; the form is only hinted at. */
const weights: Readonly<Partial<Record<DrawnKind, PictureLine['weight']>>> = {
  form: 'inside',
  fold: 'cut',
  seam: 'cut',
  border: 'notch',
};

/** No drawing of a worn garment has a path of more numbers. */
const MOST_NUMBERS = 50_000;

/**
 * A worn garment in black line, as `wornPicture` wrote it, as a small picture of that height (mm): only its lines are read,
 * each drawn anew, so that nothing else of the file comes into a booklet. Nothing where it is no such drawing.
 */
export function readLines(svg: string, height: number): Picture | undefined {
  const markup = readMarkup(svg);
  if (!markup.ok) return undefined;
  const lines = markup.value.elements.flatMap(({ name, attributes, transformed }): readonly PictureLine[] => {
    const weight = weights[attributes.class as DrawnKind];
    if (name !== 'path' || weight === undefined || transformed) return [];
    const read = readChains(attributes.d ?? '', MOST_NUMBERS);
    return read.ok ? read.chains.map(({ curves }) => ({ weight, curves })) : [];
  });
  if (lines.length === 0) return undefined;
  const { left, right, top, bottom } = boundingBox(lines.flatMap(({ curves }) => curves));
  const scale = height / (bottom - top);
  if (!Number.isFinite(scale)) return undefined;
  const place = ({ x, y }: Point): Point => point((x - left) * scale, (y - top) * scale);
  return {
    width: (right - left) * scale,
    height,
    lines: lines.map((line) => ({
      ...line,
      curves: line.curves.map((curve) => transformedCurve(curve, place)),
    })),
    words: [],
  };
}
