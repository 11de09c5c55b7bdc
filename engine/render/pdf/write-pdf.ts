import { type Ink, type InkWords, shareBefore } from '../ink.ts';
import { type LineStyle, lineStyles } from '../line-types.ts';
import { trace } from '../pen.ts';
import type { Page, PagePart } from '../tiles/page.ts';
import type { Fonts } from './fonts.ts';
import { lineTag } from './line-tag.ts';
import { newPdf } from './new-pdf.ts';
import { inPart, pdfPen, points, setDashes } from './pdf-pen.ts';

/** The shade of text that is no part of the pattern. */
const paleShade = 0.55;

/**
 * A whole PDF file, 1:1, its text embedded. Lines that have names are marked content under their tag
 * (`line-tag.ts`). Every file is dated 1 January 1970, so that the same pages give the same file to the byte. In another
 * program it takes pdfkit, fontkit and any-ascii, installed beside the package; no other function needs them.
 */
export async function pdfOf(pages: readonly Page[], title: string, fonts: Fonts): Promise<Uint8Array> {
  const { document, inLetters, bytes } = await newPdf(title, fonts);
  for (const page of pages) {
    document.addPage({ size: [points(page.width), points(page.height)], margin: 0 });
    document.lineJoin('round');
    for (const part of page.parts) drawPart({ document, inLetters, weight: page.weight ?? 1 }, part);
  }
  return bytes();
}

/** What ink goes onto: the document, words in letters that its font has, and how much heavier than usual lines are. */
interface Press {
  readonly document: PDFKit.PDFDocument;
  readonly inLetters: (text: string) => string;
  readonly weight: number;
}

function drawPart(press: Press, part: PagePart): void {
  const { document } = press;
  inPart(document, part, () => {
    for (const drawn of part.ink) {
      const tag = lineTag(drawn);
      if (tag !== undefined) document.markContent(tag);
      draw(press, drawn);
      if (tag !== undefined) document.endMarkedContent();
    }
  });
}

function draw(press: Press, ink: Ink): void {
  const { document, weight } = press;
  if (ink.kind === 'words') {
    drawWords(press, ink);
    return;
  }
  const style = lineStyles.get(ink.class);
  if (!style) return;
  if (ink.kind === 'chain') trace(pdfPen(document), ink.curves, ink.closed);
  else if (ink.kind === 'circle')
    document.circle(points(ink.middle.x), points(ink.middle.y), points(ink.radius));
  else document.rect(points(ink.corner.x), points(ink.corner.y), points(ink.width), points(ink.height));
  paint(document, { ...style, width: style.width * weight });
}

function paint(document: PDFKit.PDFDocument, { width, dashes, roundEnds, shade }: LineStyle): void {
  if (width === 0) {
    document.fill(grey(shade));
    return;
  }
  document.lineWidth(points(width)).lineCap(roundEnds ? 'round' : 'butt');
  setDashes(document, dashes);
  document.stroke(grey(shade));
}

function drawWords({ document, inLetters }: Press, words: InkWords): void {
  const { at, size, bold, anchored, pale, turnedAbout: pivot } = words;
  const text = inLetters(words.text);
  document
    .font(bold ? 'bold' : 'regular')
    .fontSize(points(size))
    .fillColor(grey(pale ? paleShade : 0));
  const left = points(at.x) - shareBefore(anchored) * document.widthOfString(text);
  document.save();
  if (pivot) document.rotate(-90, { origin: [points(pivot.x), points(pivot.y)] });
  document.text(text, left, points(at.y), { lineBreak: false, baseline: 'alphabetic' });
  document.restore();
}

/** A shade from 0, black, to 1, white. */
const grey = (shade: number): string => {
  const level = Math.round(shade * 255)
    .toString(16)
    .padStart(2, '0');
  return `#${level}${level}${level}`;
};
