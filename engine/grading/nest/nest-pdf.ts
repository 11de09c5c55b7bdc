import { shareBefore } from '../../render/ink.ts';
import { lineStyles, textSizes } from '../../render/line-types.ts';
import type { Fonts } from '../../render/pdf/fonts.ts';
import { type NewPdf, newPdf } from '../../render/pdf/new-pdf.ts';
import { inPart, pdfPen, points, setDashes } from '../../render/pdf/pdf-pen.ts';
import { trace } from '../../render/pen.ts';
import { isOfSize, type NestInk, type SizeInk } from './nest-ink.ts';
import type { NestBook, NestPart } from './nest-pages.ts';
import { sizeLine } from './size-lines.ts';

/** The parts of a PDF that the library's types do not tell of: its catalogue, and the resources of a page. */
interface PdfParts {
  readonly _root: { readonly data: Record<string, unknown> };
  readonly page: { readonly resources: { readonly data: Record<string, unknown> } };
}

/** Widths of the lines that belong to no size, of a tick, of a leader, and of the white round a name, mm. */
const thin = 0.25;
const plainWidths = { tick: 0.3, leader: 0.18 } as const;
const halo = 0.6;

/**
 * Nests as one PDF, 1:1. Every size of a book is a layer (an optional content group, ISO 32000-1:2008, 8.11) over all of its
 * pages, so that a viewer can show and print one size or some; what belongs to all is on none. The same books give the
 * same file.
 */
export async function nestPdf(books: readonly NestBook[], title: string, fonts: Fonts): Promise<Uint8Array> {
  const { document, inLetters, bytes } = await newPdf(title, fonts);
  const layers: PDFKit.PDFKitReference[] = [];
  for (const book of books) layers.push(...drawBook({ document, inLetters }, book));
  partsOf(document)._root.data.OCProperties = {
    OCGs: layers,
    D: { Order: layers, ON: layers, BaseState: 'ON' },
  };
  return bytes();
}

type Press = Pick<NewPdf, 'document' | 'inLetters'>;

const partsOf = (document: PDFKit.PDFDocument): PdfParts => document as unknown as PdfParts;

/** Draws the pages of a book; returns its layers, one a size. */
function drawBook(press: Press, { sizes, along, pages }: NestBook): readonly PDFKit.PDFKitReference[] {
  const { document, inLetters } = press;
  const layers = sizes.map((size) => {
    const words = `${along === 'sizes' ? 'size' : 'cup'} ${inLetters(size)}`;
    // The library writes text as a name of PDF unless it is such an object.
    const layer = document.ref({ Type: 'OCG', Name: Object(words) });
    layer.end(undefined);
    return layer;
  });
  for (const { width, height, parts } of pages) {
    document.addPage({ size: [points(width), points(height)], margin: 0 });
    document.lineJoin('round');
    partsOf(document).page.resources.data.Properties = Object.fromEntries(
      layers.map((layer, place) => [`size${place}`, layer]),
    );
    for (const part of parts) drawPart(press, part);
  }
  return layers;
}

function drawPart(press: Press, part: NestPart): void {
  const { document } = press;
  inPart(document, part, () => {
    for (const drawn of part.ink) {
      document.save();
      if (isOfSize(drawn)) {
        document.addContent(`/OC /size${drawn.place} BDC`);
        drawSize(press, drawn);
        document.addContent('EMC');
      } else drawCommon(press, drawn);
      document.restore();
    }
  });
}

function drawSize(press: Press, ink: SizeInk): void {
  if (ink.kind === 'key name') {
    drawCommon(press, ink.words);
    return;
  }
  const { document, inLetters } = press;
  const { colour, dashes, width } = sizeLine(ink.place);
  if (ink.kind === 'size name') {
    const text = inLetters(ink.size);
    const [x, y] = [points(ink.at.x), points(ink.at.y)];
    document.font('regular').fontSize(points(textSizes.small));
    const left = x - document.widthOfString(text) / 2;
    document.rotate((ink.turn * 180) / Math.PI, { origin: [x, y] });
    const baseline = y + points(textSizes.small / 3);
    const write = (options: PDFKit.Mixins.TextOptions): void => {
      document.text(text, left, baseline, { lineBreak: false, baseline: 'alphabetic', ...options });
    };
    document
      .lineWidth(points(2 * halo))
      .strokeColor('#ffffff')
      .fillColor('#ffffff');
    write({ stroke: true, fill: true });
    document.fillColor(colour);
    write({});
    return;
  }
  trace(pdfPen(document), ink.curves, ink.closed);
  const plain = ink.kind === 'tick' || ink.kind === 'leader' ? plainWidths[ink.kind] : undefined;
  document.lineWidth(points(plain ?? width));
  setDashes(document, plain === undefined ? dashes : []);
  document.stroke(colour);
}

function drawCommon({ document, inLetters }: Press, ink: Exclude<NestInk, SizeInk>): void {
  if (ink.kind === 'words') {
    const text = inLetters(ink.text);
    document
      .font(ink.bold ? 'bold' : 'regular')
      .fontSize(points(ink.size))
      .fillColor(ink.pale ? '#8c8c8c' : '#000000');
    const left = points(ink.at.x) - shareBefore(ink.anchored) * document.widthOfString(text);
    document.text(text, left, points(ink.at.y), { lineBreak: false, baseline: 'alphabetic' });
    return;
  }
  if (ink.kind === 'chain') trace(pdfPen(document), ink.curves, ink.closed);
  else if (ink.kind === 'box')
    document.rect(points(ink.corner.x), points(ink.corner.y), points(ink.width), points(ink.height));
  else document.circle(points(ink.middle.x), points(ink.middle.y), points(ink.radius));
  if (ink.class === 'arrow') document.fill('#000000');
  else {
    document.lineWidth(points(thin));
    setDashes(document, lineStyles.get(ink.class)?.dashes ?? []);
    document.stroke('#000000');
  }
}
