/**
 * The kinds of line on paper, told apart by dashes and weight alone so that any printer will do. Widths and
 * dashes are millimetres on paper.
 */
export const lineTypes = [
  { class: 'cut', says: 'cutting line', width: 0.7, dashes: '' },
  { class: 'stitch', says: 'stitching line', width: 0.35, dashes: '4 2' },
  { class: 'fold', says: 'fold', width: 0.4, dashes: '9 2 1 2' },
  { class: 'casing', says: 'casing', width: 0.3, dashes: '2 1 2 3' },
  { class: 'gather', says: 'gathering', width: 0.6, dashes: '0.01 1.6' },
  { class: 'slash', says: 'slash line', width: 0.2, dashes: '9 5' },
  { class: 'level', says: 'level line', width: 0.18, dashes: '' },
  { class: 'grain', says: 'grain', width: 0.35, dashes: '' },
] as const;

export type LineClass = (typeof lineTypes)[number]['class'];

/**
 * The outline of an earlier draft under the new one; only on a sheet that shows one, and in its key. Grey, and in the long
 * dash and two dots by which technical drawings show an outline before shaping (ISO 128, line type 05; from memory), so that
 * black ink tells it from every other line too.
 */
export const earlierType = {
  class: 'earlier',
  says: 'stitching line before',
  width: 0.35,
  dashes: '8 1.5 0.5 1.5 0.5 1.5',
  shade: 0.45,
} as const;

/** Lines that need no place in the key, black but for those with a shade (0 black, 1 white). */
const plainTypes = [
  { class: 'notch', width: 0.4 },
  { class: 'buttonhole', width: 0.4 },
  { class: 'bar', width: 0.4 },
  { class: 'drill', width: 0.4 },
  { class: 'cross', width: 0.3 },
  { class: 'leader', width: 0.18 },
  { class: 'square', width: 0.25 },
  { class: 'arrow', width: 0 },
  { class: 'crossing', width: 0.25 },
  { class: 'join', width: 0.18, dashes: '1 3', shade: 0.4 },
  { class: 'tile', width: 0.25, shade: 0.6 },
  { class: 'outline', width: 0.25 },
  { class: 'grid', width: 0.18, shade: 0.75 },
] as const;

/** What any ink may be: a kind of line, a sample of one in the key, or one of the plain lines. */
export type InkClass =
  | LineClass
  | `key-${LineClass}`
  | (typeof plainTypes)[number]['class']
  | (typeof earlierClasses)[number];

/** The earlier outline, and its sample in the key. */
export const earlierClasses = [earlierType.class, `key-${earlierType.class}`] as const;

/** How a line is drawn. Without a width it is filled instead. */
export interface LineStyle {
  /** mm */
  readonly width: number;
  /** Lengths of dashes and gaps in turn, mm; none for a solid line. */
  readonly dashes: readonly number[];
  readonly roundEnds: boolean;
  /** 0 black to 1 white. */
  readonly shade: number;
}

const styleOf = (type: { class: InkClass; width: number; dashes?: string; shade?: number }): LineStyle => ({
  width: type.width,
  dashes: (type.dashes ?? '').split(' ').filter(Boolean).map(Number),
  roundEnds: type.class === 'gather',
  shade: type.shade ?? 0,
});

/** The style of every class of ink. */
export const lineStyles: ReadonlyMap<InkClass, LineStyle> = new Map<InkClass, LineStyle>([
  ...[...lineTypes, ...plainTypes].map((type) => [type.class, styleOf(type)] as const),
  ...lineTypes.map((type) => [`key-${type.class}`, styleOf(type)] as const),
  ...earlierClasses.map((name) => [name, styleOf(earlierType)] as const),
]);

/** Font sizes, mm. */
export const textSizes = { heading: 6, plain: 3.5, small: 2.8 } as const;

const isEarlier = (name: InkClass): boolean => earlierClasses.some((each) => each === name);

function ruleOf([name, { width, dashes, roundEnds, shade }]: readonly [InkClass, LineStyle]): string {
  if (width === 0) return `.${name}{fill:#000;stroke:none}`;
  const dashed = dashes.length > 0 ? `;stroke-dasharray:${dashes.join(' ')}` : '';
  const ends = roundEnds ? ';stroke-linecap:round' : '';
  const grey = shade > 0 ? `;stroke:rgb(${Array(3).fill(`${shade * 100}%`)})` : '';
  return `.${name}{stroke-width:${width}${dashed}${ends}${grey}}`;
}

const rules = (wanted: (name: InkClass) => boolean): readonly string[] =>
  [...lineStyles].filter(([name]) => wanted(name)).map(ruleOf);

/**
 * The style sheet of every SVG drawing. A stitching line on a fold shows no dashes of its own: the cutting line
 * runs there.
 */
export const styleSheet = [
  'path,circle,rect{fill:none;stroke:#000;stroke-linejoin:round}',
  '.paper{fill:#fff;stroke:none}',
  ...rules((name) => !isEarlier(name)),
  '.stitch[data-turn="fold"]{stroke:none}',
  'text{font-family:sans-serif}',
].join('\n');

/** The style sheet of a sheet that shows an earlier draft under its pieces. */
export const earlierStyleSheet = [styleSheet, ...rules(isEarlier)].join('\n');
