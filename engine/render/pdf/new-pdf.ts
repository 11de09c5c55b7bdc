import { printable } from '../markup.ts';
import type { Fonts } from './fonts.ts';
import { lettersOf } from './letters.ts';
import { notBeside } from './not-beside.ts';

/** A PDF that is being written. */
export interface NewPdf {
  /** Without pages, with the fonts `regular` and `bold`. */
  readonly document: PDFKit.PDFDocument;
  /** Words in letters that its fonts have. */
  readonly inLetters: (text: string) => string;
  /** Ends the document: the whole file. */
  readonly bytes: () => Promise<Uint8Array>;
}

/** What one object of a document holds until it is written; the library's types do not tell. */
interface HeldObject {
  readonly data: Record<string, unknown>;
  buffer: Uint8Array[];
  finalize: () => void;
}

/**
 * Has streams packed (ISO 32000-1:2008, 7.4.4) by one packer everywhere: the library takes that of Node where there is one,
 * and the same pages would give other bytes in a browser.
 */
function packStreams(document: PDFKit.PDFDocument, pack: (bytes: Uint8Array) => Uint8Array): void {
  const ref = document.ref.bind(document);
  document.ref = (data) => {
    const made = ref(data);
    const held = made as unknown as HeldObject;
    const finalize = held.finalize.bind(held);
    held.finalize = () => {
      if (held.buffer.length > 0 && held.data.Filter === undefined) {
        held.buffer = [pack(joined(held.buffer))];
        held.data.Filter = 'FlateDecode';
      }
      finalize();
    };
    return made;
  };
}

/** A PDF to be written. Every file is dated 1 January 1970, so that the same pages give the same file to the byte. */
export async function newPdf(title: string, fonts: Fonts): Promise<NewPdf> {
  // Loaded here because no other command needs it and it takes as long to load as a garment to draft.
  const [{ default: PDFDocument }, { zlibSync }] = await Promise.all([
    import('pdfkit').catch(notBeside),
    import('fflate'),
  ]);
  const inLetters = await lettersOf([fonts.regular, fonts.bold]);
  const info = { Title: printable(title), Creator: 'bodkin', CreationDate: new Date(0) };
  // No font but ours: the library would read one of its own first.
  const document = new PDFDocument({
    autoFirstPage: false,
    font: '',
    pdfVersion: '1.7',
    info,
    compress: false,
  });
  packStreams(document, zlibSync);
  document.registerFont('regular', fonts.regular);
  document.registerFont('bold', fonts.bold);
  const written: Uint8Array[] = [];
  document.on('data', (part: Uint8Array) => written.push(part));
  const ended = new Promise((resolve) => document.on('end', resolve));
  return {
    document,
    inLetters,
    bytes: async () => {
      document.end();
      await ended;
      return joined(written);
    },
  };
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
