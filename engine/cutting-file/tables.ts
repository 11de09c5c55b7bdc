import type { CuttingDrawing } from './drawn.ts';
import { APPLICATION } from './drawn-groups.ts';
import { at, type DxfGroup, type Numbering, real } from './group-codes.ts';
import { dashesOf, type Layer, layers } from './layers.ts';

/** The root of all objects. */
export const NOBODY = '0';

const solid = 'CONTINUOUS';

const lineTypeOf = (layer: Layer): string => (layer.dashedAs === undefined ? solid : layer.name);

/** The tables: what the drawing shows when it is opened, line types, layers, the font, and the blocks' records. */
export function tables(
  { width, height }: CuttingDrawing,
  records: ReadonlyMap<string, string>,
  to: Numbering,
): readonly DxfGroup[] {
  const table = (
    name: string,
    rows: readonly ((owner: string) => readonly DxfGroup[])[],
    more: readonly DxfGroup[] = [],
  ): readonly DxfGroup[] => {
    const handle = to.handle();
    return [
      [0, 'TABLE'],
      [2, name],
      ...to.modern([5, handle], [330, NOBODY], [100, 'AcDbSymbolTable']),
      [70, rows.length],
      ...more,
      ...rows.flatMap((row) => row(handle)),
      [0, 'ENDTAB'],
    ];
  };
  const row =
    (kind: string, className: string, name: string, groups: readonly DxfGroup[], given?: string) =>
    (owner: string): readonly DxfGroup[] => [
      ...to.begun(kind, owner, given),
      ...to.modern([100, 'AcDbSymbolTableRecord'], [100, className]),
      [2, name],
      ...groups,
    ];
  const lineType = (name: string, says: string, dashes: readonly number[]) =>
    row('LTYPE', 'AcDbLinetypeTableRecord', name, [
      [70, 0],
      [3, says],
      [72, 65],
      [73, dashes.length],
      [40, real(dashes.reduce((sum, dash) => sum + dash, 0))],
      ...dashes.flatMap((dash, i): readonly DxfGroup[] => [
        // A gap is a dash of negative length.
        [49, real(i % 2 === 0 ? dash : -dash)],
        ...to.modern([74, 0]),
      ]),
    ]);
  const layer = (name: string, colour: number, dashed: string) =>
    row('LAYER', 'AcDbLayerTableRecord', name, [
      [70, 0],
      [62, colour],
      [6, dashed],
    ]);
  const dashed: readonly Layer[] = layers.filter((one: Layer) => one.dashedAs !== undefined);
  const modern = to.version !== 'AC1009';
  return [
    ...table('VPORT', [
      row('VPORT', 'AcDbViewportTableRecord', '*ACTIVE', [
        [70, 0],
        ...flat(10, 0, 0),
        ...flat(11, 1, 1),
        ...flat(12, width / 2, height / 2),
        ...flat(13, 0, 0),
        ...flat(14, 10, 10),
        ...flat(15, 10, 10),
        ...flat(16, 0, 0),
        [36, real(1)],
        ...at(17, { x: 0, y: 0 }),
        [40, real(1.1 * Math.max(height, width / 1.6))],
        [41, real(1.6)],
        [42, real(50)],
        [43, real(0)],
        [44, real(0)],
        [50, real(0)],
        [51, real(0)],
        ...([
          [71, 0],
          [72, 100],
          [73, 1],
          [74, 3],
          [75, 0],
          [76, 0],
          [77, 0],
          [78, 0],
        ] as const),
      ]),
    ]),
    ...table('LTYPE', [
      ...(modern ? [lineType('ByBlock', '', []), lineType('ByLayer', '', [])] : []),
      lineType(solid, 'solid', []),
      ...dashed.map((one) => lineType(one.name, one.says, dashesOf(one))),
    ]),
    ...table('LAYER', [
      layer('0', 7, solid),
      ...layers.map((one: Layer) => layer(one.name, one.colour, lineTypeOf(one))),
    ]),
    ...table('STYLE', [
      row('STYLE', 'AcDbTextStyleTableRecord', 'STANDARD', [
        [70, 0],
        [40, real(0)],
        // The stroke font is wider than the letters that the labels were measured in.
        [41, real(0.7)],
        [50, real(0)],
        [71, 0],
        [42, real(2.5)],
        [3, 'txt'],
        [4, ''],
      ]),
    ]),
    ...table('VIEW', []),
    ...table('UCS', []),
    ...table(
      'APPID',
      ['ACAD', APPLICATION].map((name) => row('APPID', 'AcDbRegAppTableRecord', name, [[70, 0]])),
    ),
    ...(modern
      ? [
          ...table('DIMSTYLE', [dimensionStyle(to)], [[100, 'AcDbDimStyleTable']]),
          ...table(
            'BLOCK_RECORD',
            [...records].map(([name, handle]) =>
              row('BLOCK_RECORD', 'AcDbBlockTableRecord', name, [[340, NOBODY]], handle),
            ),
          ),
        ]
      : []),
  ];
}

/** The one row that has its handle under another code. */
const dimensionStyle =
  (to: Numbering) =>
  (owner: string): readonly DxfGroup[] => [
    [0, 'DIMSTYLE'],
    [105, to.handle()],
    [330, owner],
    [100, 'AcDbSymbolTableRecord'],
    [100, 'AcDbDimStyleTableRecord'],
    [2, 'STANDARD'],
    [70, 0],
  ];

/** A place of two numbers. */
const flat = (code: number, x: number, y: number): readonly DxfGroup[] => at(code, { x, y }).slice(0, 2);
