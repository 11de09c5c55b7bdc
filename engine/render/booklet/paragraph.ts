import { point } from '../../geometry/point.ts';
import { lineEnds } from '../../text/line-ends.ts';
import type { Block } from './block.ts';

/** How a paragraph is set; mm. */
export interface Setting {
  readonly size: number;
  readonly bold?: boolean;
  /** A sign that hangs before the text, and the room kept for it. */
  readonly sign?: string;
  readonly indent?: number;
  readonly after?: number;
}

/** Distance from line to line, as a share of the font size. */
const leading = 1.3;

/**
 * Width of a character as a share of the font size, plain and bold: a tenth more than the average of running English
 * text in the font that is embedded, so that a line does not run over. Measured on printed pages, no source.
 */
const [plainWidth, boldWidth] = [0.45, 0.48];

/** Text broken into lines of a width. */
export function paragraph(text: string, width: number, setting: Setting): Block {
  const { size, bold = false, sign, indent = 0, after = size * 0.35 } = setting;
  const most = Math.floor((width - indent) / (size * (bold ? boldWidth : plainWidth)));
  const lines = broken(text, most);
  return {
    height: lines.length * size * leading + after,
    ink: ({ x, y }) => {
      const baseline = (line: number): number => y + size + line * size * leading;
      return [
        ...(sign
          ? [{ kind: 'words' as const, text: sign, at: point(x, baseline(0)), size, bold: true }]
          : []),
        ...lines.map((line, i) => ({
          kind: 'words' as const,
          text: line,
          at: point(x + indent, baseline(i)),
          size,
          bold,
        })),
      ];
    },
  };
}

/** Breaks text between words into lines of at most so many characters; a longer word stands alone. */
export function broken(text: string, most: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(lineEnds)) {
    const longer = `${lines.at(-1) ?? ''} ${word}`;
    if (lines.length > 0 && longer.length <= most) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}
