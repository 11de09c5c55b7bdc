import { fixed } from '../../text/figure.ts';
import type { Pen } from '../pen.ts';
import type { PagePart } from '../tiles/page.ts';

/** Millimetres as units of PDF, which are 1/72 in (ISO 32000-1:2008, 8.3.2.3). */
export const points = (mm: number): number => (mm * 72) / 25.4;

/** The pen of a PDF page whose y runs down. The library writes six digits behind the point. */
export const pdfPen = (document: PDFKit.PDFDocument): Pen => ({
  moveTo: (to) => document.moveTo(points(to.x), points(to.y)),
  lineTo: (to) => document.lineTo(points(to.x), points(to.y)),
  cubicTo: (handle1, handle2, to) =>
    document.bezierCurveTo(
      points(handle1.x),
      points(handle1.y),
      points(handle2.x),
      points(handle2.y),
      points(to.x),
      points(to.y),
    ),
  close: () => document.closePath(),
});

/** Sets the dashes of the lines to come, mm. The library's types know of no pattern but one dash and one gap. */
export const setDashes = (document: PDFKit.PDFDocument, dashes: readonly number[]): void => {
  document.addContent(`[${dashes.map((length) => fixed(points(length), 3)).join(' ')}] 0 d`);
};

/** Draws what belongs into a part of a page: moved to its place, and nothing of it outside its clip. */
export function inPart(
  document: PDFKit.PDFDocument,
  { clip, shift }: Pick<PagePart, 'shift'> & { readonly clip?: PagePart['clip'] | undefined },
  draw: () => void,
): void {
  document.save();
  if (clip) {
    const { left, top, right, bottom } = clip;
    document.rect(points(left), points(top), points(right - left), points(bottom - top)).clip();
  }
  document.translate(points(shift.x), points(shift.y));
  draw();
  document.restore();
}
