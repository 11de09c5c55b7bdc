import { point } from '../../geometry/point.ts';
import { type Size, standInRows } from '../../render/layout.ts';
import { textSizes } from '../../render/line-types.ts';
import { document, element, type Node, words } from '../../render/markup.ts';
import { numeral } from '../../render/path-data.ts';
import { fileNameOf } from '../../render/svg.ts';
import { svgInk } from '../../render/svg-ink.ts';
import { testSquares, testSquaresSize } from '../../render/test-squares.ts';
import { textWidth } from '../../render/text-size.ts';
import type { Grade } from '../grade.ts';
import type { GradedSize } from '../laid-size.ts';
import { drawnNest, type Nest, nestSize } from './nest.ts';
import { nestStyle } from './size-lines.ts';

/** White between nests and at the paper's edge, and how wide a sheet of them is made to be read at a glance, mm. */
const gap = 20;
const sheetWidth = 2200;

const keyRow = 6;
const keySample = 40;

/** What one set of nests shows: the sizes of one cup with those that stand alone, or the cups of one size. */
interface NestSet {
  readonly along: 'sizes' | 'cups';
  readonly title: string;
  readonly sizes: readonly { readonly name: string; readonly graded: GradedSize }[];
}

/**
 * The nests of a grade as SVG files at 1:1 by file name: one a piece, and a sheet of them all, `nest.svg`; where the chart
 * has cups, the same along the cups of its middle size, `nest-cups.svg`. Sizes beyond `mostLines` share a line type.
 */
export function nestFiles(grade: Grade): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (const set of setsOf(grade)) {
    const prefix = set.along === 'sizes' ? 'nest' : 'nest-cups';
    const nests = nestsOf(set);
    for (const nest of nests)
      files.set(
        `${prefix}-${fileNameOf({ name: nest.piece, number: nest.number })}`,
        paperOf(`${set.title}: ${nest.number} ${nest.piece}`, set, [nest]),
      );
    files.set(`${prefix}.svg`, paperOf(set.title, set, nests));
  }
  return files;
}

function setsOf({ garment, chart, sizes }: Grade): readonly NestSet[] {
  const { size: middle, cup } = chart.middle;
  const run = sizes.filter(({ of }) => of.alone || of.cup === cup);
  const inCup = cup === '' ? '' : `, cup ${cup}`;
  const cups = sizes.filter(({ of }) => !of.alone && of.size === middle);
  return [
    {
      along: 'sizes',
      title: `${garment}, ${chart.name}: sizes${inCup}`,
      sizes: run.map((graded) => ({ name: graded.of.size, graded })),
    },
    ...(chart.cups.length > 1
      ? [
          {
            along: 'cups' as const,
            title: `${garment}, ${chart.name}: cups of size ${middle}`,
            sizes: cups.map((graded) => ({ name: graded.of.cup, graded })),
          },
        ]
      : []),
  ];
}

/** The nests of a set, in the order of the pieces; a piece that only some sizes have is shown in these. */
function nestsOf({ sizes }: NestSet): readonly Nest[] {
  const names = new Set(sizes.flatMap(({ graded }) => [...graded.pieces.keys()]));
  return [...names].flatMap((piece): readonly Nest[] => {
    const laid = sizes.flatMap(({ name, graded }, place) => {
      const one = graded.pieces.get(piece);
      return one ? [{ name, place, laid: one }] : [];
    });
    const first = laid[0]?.laid;
    return first ? [{ piece, number: first.finished.piece.number, anchor: first.anchor, sizes: laid }] : [];
  });
}

function paperOf(title: string, set: NestSet, nests: readonly Nest[]): string {
  const key = set.sizes.map(({ name }) => name);
  const boxes: readonly Size[] = [...nests.map(nestSize), keySize(key), testSquaresSize];
  const { corners, paper } = standInRows(boxes, nests.length > 1 ? sheetWidth : 0, gap);
  const cornerOf = (i: number) => corners[i] ?? point(gap, gap);
  const head = textSizes.heading;
  const shift = (p: { readonly x: number; readonly y: number }) => point(p.x, p.y + head);
  const heading = svgInk({
    kind: 'words',
    text: title,
    size: textSizes.heading,
    bold: true,
    at: point(gap, gap),
  });
  const content = [
    heading,
    ...nests.map((nest, i) => drawnNest(nest, shift(cornerOf(i)))),
    ...sizeKey(key, shift(cornerOf(nests.length))),
    ...testSquares(shift(cornerOf(nests.length + 1))).map(svgInk),
  ];
  const wide = Math.max(paper.width, textWidth(title, textSizes.heading) + 2 * gap);
  const [width, height] = [Math.ceil(wide), Math.ceil(paper.height + head)];
  return document(
    element(
      'svg',
      {
        xmlns: 'http://www.w3.org/2000/svg',
        width: `${width}mm`,
        height: `${height}mm`,
        viewBox: `0 0 ${width} ${height}`,
      },
      [
        element('title', {}, words(title)),
        element('style', {}, words(nestStyle(key.length))),
        element('rect', { class: 'paper', width: numeral(width), height: numeral(height) }),
        ...content,
      ],
    ),
  );
}

const keySize = (names: readonly string[]): Size => ({
  width: keySample + 6 + Math.max(...names.map((name) => textWidth(name, textSizes.plain))),
  height: keyRow * names.length,
});

/** A sample of each size's line, with its name. */
const sizeKey = (
  names: readonly string[],
  { x, y }: { readonly x: number; readonly y: number },
): readonly Node[] =>
  names.flatMap((text, place) => {
    const level = y + (place + 0.5) * keyRow;
    return [
      element('path', {
        class: `size-${place}`,
        d: `M${numeral(x)} ${numeral(level)}H${numeral(x + keySample)}`,
      }),
      svgInk({ kind: 'words', text, size: textSizes.plain, at: point(x + keySample + 4, level + 1.2) }),
    ];
  });
