import { type Ink, ownName } from '../ink.ts';

/**
 * The tag of the marked content that holds a line which has names: class, piece and own name with bars between
 * them, such as `stitch|centre front|princess`. Nothing else in a PDF can name a path. Written as a PDF name
 * (ISO 32000-1:2008, 7.3.5): every byte of its UTF-8 that is not plain stands as `#` and two hexadecimal digits.
 */
export function lineTag(ink: Ink): string | undefined {
  if (ink.kind === 'box' || ink.kind === 'words' || !ink.names) return undefined;
  const tag = [ink.class, ink.names.piece ?? '', ownName(ink.names)].join('|');
  return Array.from(new TextEncoder().encode(tag), (byte) =>
    isPlain(byte) ? String.fromCharCode(byte) : `#${byte.toString(16).padStart(2, '0')}`,
  ).join('');
}

/** Letters, digits and `-`. */
const isPlain = (byte: number): boolean => /[A-Za-z0-9-]/.test(String.fromCharCode(byte));
