import type { CuttingDrawing, DxfBlock } from './drawn.ts';
import { attributeDefinitions, drawnGroups, insertion } from './drawn-groups.ts';
import type { Version } from './flavour.ts';
import { at, type DxfGroup, Numbering, real, written } from './group-codes.ts';
import { NOBODY, tables } from './tables.ts';

const origin = { x: 0, y: 0 };

const modelSpace = '*Model_Space';

/** The blocks that every drawing has from R13 on: what is drawn, and the paper it could be laid out on. */
const spaces: readonly DxfBlock[] = [modelSpace, '*Paper_Space'].map((name) => ({
  name,
  drawn: [],
  attributes: [],
  place: origin,
}));

/**
 * A cutting file as text: DXF, ASCII, in millimetres. The group codes are those of the published reference of the format for
 * releases 12 and 2000 (from memory), held to by three readers in the tests.
 */
export function writeDxf(drawing: CuttingDrawing, version: Version): string {
  const to = new Numbering(version);
  const blocks = version === 'AC1009' ? drawing.blocks : [...spaces, ...drawing.blocks];
  const records = new Map(blocks.map(({ name }) => [name, to.handle()]));
  const recordOf = (name: string): string => records.get(name) ?? NOBODY;
  const space = recordOf(modelSpace);
  const body = [
    ...section('TABLES', tables(drawing, records, to)),
    ...section(
      'BLOCKS',
      blocks.flatMap((block) => blockGroups(block, recordOf(block.name), to)),
    ),
    ...section('ENTITIES', [
      ...drawing.blocks.flatMap((block) => insertion(block, space, to)),
      ...drawing.beside.flatMap((one) => drawnGroups(one, space, to)),
    ]),
    ...(version === 'AC1009' ? [] : section('OBJECTS', objects(to))),
  ];
  return written([
    [999, 'Units are millimetres.'],
    ...section('HEADER', header(drawing, version, to)),
    ...(version === 'AC1009' ? [] : section('CLASSES', [])),
    ...body,
    [0, 'EOF'],
  ]);
}

const section = (name: string, groups: readonly DxfGroup[]): readonly DxfGroup[] => [
  [0, 'SECTION'],
  [2, name],
  ...groups,
  [0, 'ENDSEC'],
];

/** Written after everything else is numbered. */
const header = ({ width, height }: CuttingDrawing, version: Version, to: Numbering): readonly DxfGroup[] => [
  [9, '$ACADVER'],
  [1, version],
  [9, '$DWGCODEPAGE'],
  [3, 'ANSI_1252'],
  // 4: millimetres. Newer than R12, whose readers pass over it.
  [9, '$INSUNITS'],
  [70, 4],
  ...to.modern([9, '$MEASUREMENT'], [70, 1]),
  [9, '$LUNITS'],
  [70, 2],
  [9, '$EXTMIN'],
  ...at(10, origin),
  [9, '$EXTMAX'],
  ...at(10, { x: width, y: height }),
  [9, '$LIMMIN'],
  ...at(10, origin).slice(0, 2),
  [9, '$LIMMAX'],
  ...at(10, { x: width, y: height }).slice(0, 2),
  // Dashes are millimetres of the cloth.
  [9, '$LTSCALE'],
  [40, real(1)],
  ...to.modern([9, '$HANDSEED'], [5, to.handle()]),
];

function blockGroups(
  { name, drawn, attributes }: DxfBlock,
  record: string,
  to: Numbering,
): readonly DxfGroup[] {
  const edge = (kind: string, className: string): readonly DxfGroup[] =>
    to.drawn(kind, record, '0', className);
  return [
    ...edge('BLOCK', 'AcDbBlockBegin'),
    [2, name],
    [70, attributes.length > 0 ? 2 : 0],
    ...at(10, origin),
    [3, name],
    [1, ''],
    ...drawn.flatMap((one) => drawnGroups(one, record, to)),
    ...attributeDefinitions(attributes, record, to),
    ...edge('ENDBLK', 'AcDbBlockEnd'),
  ];
}

/** The dictionary that everything hangs on, and that of groups, of which there are none. */
function objects(to: Numbering): readonly DxfGroup[] {
  const [root, groups] = [to.handle(), to.handle()];
  const dictionary: readonly DxfGroup[] = [
    [100, 'AcDbDictionary'],
    [281, 1],
  ];
  return [
    ...to.begun('DICTIONARY', NOBODY, root),
    ...dictionary,
    [3, 'ACAD_GROUP'],
    [350, groups],
    ...to.begun('DICTIONARY', root, groups),
    ...dictionary,
  ];
}
