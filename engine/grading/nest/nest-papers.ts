import { type Point, point } from '../../geometry/point.ts';
import type { Ink } from '../../render/ink.ts';
import { type Size, standInRows } from '../../render/layout.ts';
import { textSizes } from '../../render/line-types.ts';
import { fileNameOf } from '../../render/svg.ts';
import { testSquares, testSquaresSize } from '../../render/test-squares.ts';
import { textWidth } from '../../render/text-size.ts';
import type { ChartSize } from '../chart.ts';
import type { Grade } from '../grade.ts';
import type { GradedSize } from '../laid-size.ts';
import { type Nest, type NestLine, nestInk, nestSize } from './nest.ts';
import type { NestInk, NestPaper } from './nest-ink.ts';
import { nestSvg } from './nest-svg.ts';

/** White between nests and at the paper's edge, and how wide a sheet of them is made to be read at a glance, mm. */
const gap = 20;
const sheetWidth = 2200;

const keyRow = 6;
const keySample = 40;

/** What nests are to show. */
export interface NestOptions {
  readonly line: NestLine;
  /** Only these sizes, on one set of nests; left out, the sizes of the chart's middle cup and the cups of its middle size. */
  readonly only?: readonly ChartSize[] | undefined;
}

const usual: NestOptions = { line: 'stitching' };

/** What one set of nests shows: the sizes of one cup with those that stand alone, the cups of one size, or chosen sizes. */
interface NestSet {
  readonly along: 'sizes' | 'cups';
  readonly title: string;
  readonly sizes: readonly { readonly name: string; readonly graded: GradedSize }[];
}

/**
 * The nests of a grade as SVG files at 1:1 by file name: one a piece, and a sheet of them all, `nest.svg`; where the chart
 * has cups, the same along the cups of its middle size, `nest-cups.svg`. Sizes beyond `mostLines` share a line type.
 */
export function nestFiles(grade: Grade, options: NestOptions = usual): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  for (const set of setsOf(grade, options.only)) {
    const prefix = set.along === 'sizes' ? 'nest' : 'nest-cups';
    const nests = nestsOf(set, options.line);
    for (const nest of nests) {
      const title = `${set.title}: ${nest.number} ${nest.piece}`;
      const name = fileNameOf({ name: nest.piece, number: nest.number });
      files.set(`${prefix}-${name}`, nestSvg(paperOf(title, set, [nest])));
    }
    files.set(`${prefix}.svg`, nestSvg(paperOf(set.title, set, nests)));
  }
  return files;
}

/**
 * The nest of one piece in these sizes as a whole SVG file, 1:1, its key `beside` it or under it, the outline of the one called `marked` in a heavy line;
 * nothing where none of them has the piece.
 */
export function pieceNest(
  { garment, chart, sizes }: Grade,
  { piece, line, beside }: { readonly piece: string; readonly line: NestLine; readonly beside: boolean },
  shown: readonly ChartSize[],
  marked: string,
): string | undefined {
  const chosen = sizes.filter(({ of }) => shown.includes(of));
  const set: NestSet = {
    along: 'sizes',
    title: `${garment}, ${chart.name}: ${piece}`,
    sizes: chosen.map((graded) => ({ name: graded.of.name, graded })),
  };
  const nest = nestsOf(set, line).find((one) => one.piece === piece);
  const heavy = chosen.findIndex(({ of }) => of.name === marked);
  return (
    nest && nestSvg(paperOf(set.title, set, [nest], beside ? sheetWidth : 0), heavy < 0 ? undefined : heavy)
  );
}

/** The sheets of all nests, along the sizes and, where the chart has cups, along the cups. */
export const nestSheets = (grade: Grade, { only, line }: NestOptions = usual): readonly NestPaper[] =>
  setsOf(grade, only).map((set) => paperOf(set.title, set, nestsOf(set, line)));

function setsOf({ garment, chart, sizes }: Grade, only: NestOptions['only']): readonly NestSet[] {
  if (only) {
    const chosen = sizes.filter(({ of }) => only.includes(of));
    const names = chosen.map(({ of }) => of.name);
    return [
      {
        along: 'sizes',
        title: `${garment}, ${chart.name}: ${names.length > 1 ? 'sizes' : 'size'} ${names.join(', ')}`,
        sizes: chosen.map((graded) => ({ name: graded.of.name, graded })),
      },
    ];
  }
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
function nestsOf({ sizes }: NestSet, line: NestLine): readonly Nest[] {
  const names = new Set(sizes.flatMap(({ graded }) => [...graded.pieces.keys()]));
  return [...names].flatMap((piece): readonly Nest[] => {
    const laid = sizes.flatMap(({ name, graded }, place) => {
      const one = graded.pieces.get(piece);
      return one ? [{ name, place, laid: one }] : [];
    });
    const first = laid[0]?.laid;
    return first
      ? [{ line, piece, number: first.finished.piece.number, anchor: first.anchor, sizes: laid }]
      : [];
  });
}

function paperOf(
  title: string,
  set: NestSet,
  nests: readonly Nest[],
  rowWidth = nests.length > 1 ? sheetWidth : 0,
): NestPaper {
  const sizes = set.sizes.map(({ name }) => name);
  const boxes: readonly Size[] = [...nests.map(nestSize), keySize(sizes), testSquaresSize];
  const { corners, paper } = standInRows(boxes, rowWidth, gap);
  const cornerOf = (i: number): Point => {
    const { x, y } = corners[i] ?? point(gap, gap);
    return point(x, y + textSizes.heading);
  };
  const heading = { text: title, size: textSizes.heading, bold: true, at: point(gap, gap) };
  return {
    title,
    along: set.along,
    width: Math.ceil(Math.max(paper.width, textWidth(title, textSizes.heading) + 2 * gap)),
    height: Math.ceil(paper.height + textSizes.heading),
    sizes,
    groups: [
      { ink: [{ kind: 'words', ...heading }] },
      ...nests.map((nest, i) => ({ piece: nest.piece, ink: nestInk(nest, cornerOf(i)) })),
      { ink: sizeKey(sizes, cornerOf(nests.length)) },
      { isScale: true, ink: testSquares(cornerOf(nests.length + 1)) },
    ],
  };
}

const keySize = (names: readonly string[]): Size => ({
  width: keySample + 6 + Math.max(...names.map((name) => textWidth(name, textSizes.plain))),
  height: keyRow * names.length,
});

/** A sample of each size's line, with its name. */
const sizeKey = (names: readonly string[], { x, y }: Point): readonly NestInk[] =>
  names.flatMap((text, place): readonly NestInk[] => {
    const level = y + (place + 0.5) * keyRow;
    const line = { kind: 'line', from: point(x, level), to: point(x + keySample, level) } as const;
    const at = point(x + keySample + 4, level + 1.2);
    const words: Ink = { kind: 'words', text, size: textSizes.plain, at };
    return [
      { kind: 'sample', place, size: text, curves: [line] },
      { kind: 'key name', place, size: text, words },
    ];
  });
