import type { Curve } from '../../geometry/curve.ts';
import type { Point } from '../../geometry/point.ts';
import type { Anchored } from '../ink.ts';
import { numeral, pathData } from '../path-data.ts';
import { type Html, html } from './html.ts';

/** A small drawing, in millimetres of the page. */
export interface Picture {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly PictureLine[];
  readonly words: readonly PictureWord[];
}

export interface PictureLine {
  readonly weight: 'cut' | 'stitch' | 'inside' | 'notch' | 'heavy' | 'leader';
  readonly curves: readonly Curve[];
  readonly closed?: true;
}

export interface PictureWord {
  readonly kind: 'name' | 'letter';
  readonly text: string;
  /** On the baseline: its middle, or what of it `anchored` names. */
  readonly at: Point;
  readonly anchored?: Anchored;
}

/** Sizes of the words in a picture, mm. */
export const nameSize = 2.6;
export const letterSize = 3.2;

/** White round a picture, so that no heavy line is cut off, mm. */
const margin = 0.6;

/** A picture as SVG inside a page, as large as it says. */
export const pictureSvg = ({ width, height, lines, words }: Picture, title: string): Html => {
  const [outerWidth, outerHeight] = [numeral(width + 2 * margin), numeral(height + 2 * margin)];
  return html(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      role: 'img',
      width: `${outerWidth}mm`,
      height: `${outerHeight}mm`,
      viewBox: `-${margin} -${margin} ${outerWidth} ${outerHeight}`,
    },
    html('title', {}, title),
    lines.map(({ weight, curves, closed }) =>
      html('path', { class: weight, d: pathData(curves, closed ?? false) }),
    ),
    words.map(({ kind, text, at, anchored }) =>
      html(
        'text',
        {
          class: kind,
          x: numeral(at.x),
          y: numeral(at.y),
          'text-anchor': anchored ?? 'middle',
          'font-size': String(kind === 'letter' ? letterSize : nameSize),
        },
        text,
      ),
    ),
  );
};
