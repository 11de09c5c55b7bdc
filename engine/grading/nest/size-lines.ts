/** How the line of one size is drawn, widths and dashes in mm on paper. */
export interface SizeLine {
  readonly colour: string;
  readonly dashes: readonly number[];
  readonly width: number;
}

/**
 * Colours that people of any colour vision tell apart: M. Okabe and K. Ito, Color Universal Design, 2008 (from memory),
 * without their yellow, which is lost on white paper.
 */
const colours = ['#000000', '#d55e00', '#0072b2', '#009e73', '#cc79a7', '#e69f00', '#56b4e9'] as const;

/**
 * The line types of technical drawings, ISO 128-2 (from memory), in an order in which neighbours are least alike: a dash
 * is 12, a long one 24, a short one 6 widths of the line, a gap 3, and a dot as long as a pen is wide.
 */
const dashes = [
  [],
  [4.2, 1.1],
  [8.4, 1.1, 0.4, 1.1],
  [0.4, 1.1],
  [8.4, 1.1, 2.1, 1.1],
  [4.2, 6.3],
  [8.4, 1.1, 0.4, 1.1, 0.4, 1.1],
  [4.2, 1.1, 0.4, 1.1],
  [8.4, 1.1, 2.1, 1.1, 2.1, 1.1],
  [4.2, 1.1, 0.4, 1.1, 0.4, 1.1],
  [4.2, 1.1, 4.2, 1.1, 0.4, 1.1],
  [8.4, 1.1, 0.4, 1.1, 0.4, 1.1, 0.4, 1.1],
  [4.2, 1.1, 4.2, 1.1, 0.4, 1.1, 0.4, 1.1],
  [4.2, 1.1, 0.4, 1.1, 0.4, 1.1, 0.4, 1.1],
  [4.2, 1.1, 4.2, 1.1, 0.4, 1.1, 0.4, 1.1, 0.4, 1.1],
] as const;

/** Widths: with more sizes than types of line, the same dashes come again in a heavier line. */
const widths = [0.35, 0.7, 1] as const;

/** So many sizes can be told apart in black and white. */
export const mostLines = dashes.length * widths.length;

/** The line of the size in this place of a nest: no other of `mostLines` has its dashes and width. */
export const sizeLine = (place: number): SizeLine => ({
  colour: colours[place % colours.length] ?? colours[0],
  dashes: dashes[place % dashes.length] ?? [],
  width: widths[Math.floor(place / dashes.length) % widths.length] ?? widths[0],
});

/** Of the one size that is looked at, mm: heavier than any other. */
const heavyWidth = 1.8;

/**
 * The style sheet of a nest of so many sizes: `size-0` and on for outlines, `tick-0` for notches, `name-0` for words; the
 * outline in the place `heavy` in a heavy stroke.
 */
export const nestStyle = (count: number, heavy?: number): string =>
  [
    'path,rect{fill:none;stroke:#000;stroke-linejoin:round}',
    '.paper{fill:#fff;stroke:none}',
    '.arrow{fill:#000;stroke:none}',
    '.square,.cross,.grain{stroke-width:.25}',
    'text{font-family:sans-serif;fill:#000;stroke:none}',
    // White round the words of a line, so that they can stand on it.
    '.size-name{paint-order:stroke;stroke:#fff;stroke-width:1.2;stroke-linejoin:round;text-anchor:middle}',
    ...Array.from({ length: count }, (_, place) => {
      const { colour, dashes: pattern, width } = sizeLine(place);
      const dashed = pattern.length > 0 ? `;stroke-dasharray:${pattern.join(' ')}` : '';
      return [
        `.size-${place}{stroke:${colour};stroke-width:${width}${dashed}}`,
        `.tick-${place}{stroke:${colour};stroke-width:.3}`,
        `.leader-${place}{stroke:${colour};stroke-width:.18}`,
        `.name-${place}{fill:${colour}}`,
      ].join('\n');
    }),
    ...(heavy === undefined ? [] : [`.size-${heavy}{stroke-width:${heavyWidth}}`]),
  ].join('\n');
