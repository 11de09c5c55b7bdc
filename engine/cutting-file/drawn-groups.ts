import type { Attributes, DxfDrawing } from './drawn.ts';
import { at, type DxfGroup, type Numbering, real, said } from './group-codes.ts';

/** The program whose names stand beside lines as extended data. */
export const APPLICATION = 'BODKIN';

/** The height of attributes, which do not show, mm. */
const ATTRIBUTE_HEIGHT = 3;

/** Something drawn, as groups. `owner` is the handle of what it stands in. */
export function drawnGroups(drawn: DxfDrawing, owner: string, to: Numbering): readonly DxfGroup[] {
  const names: readonly DxfGroup[] =
    drawn.names.length > 0 ? [[1001, APPLICATION], ...drawn.names.map((name) => said(1000, name))] : [];
  switch (drawn.kind) {
    case 'line':
      return lineGroups(drawn, owner, to, names);
    case 'spline':
      return [
        ...to.drawn('SPLINE', owner, drawn.layer, 'AcDbSpline'),
        ...at(210, { x: 0, y: 0 }).slice(0, 2),
        [230, real(1)],
        // Flat; of the third degree, with the knots of a single cubic.
        [70, 8],
        [71, 3],
        [72, 8],
        [73, 4],
        [74, 0],
        ...[0, 0, 0, 0, 1, 1, 1, 1].map((knot): DxfGroup => [40, real(knot)]),
        ...drawn.control.flatMap((p) => at(10, p)),
        ...names,
      ];
    case 'circle':
      return [
        ...to.drawn('CIRCLE', owner, drawn.layer, 'AcDbCircle'),
        ...at(10, drawn.middle),
        [40, real(drawn.radius)],
        ...names,
      ];
    case 'text': {
      const place = drawn.at;
      return [
        ...to.drawn('TEXT', owner, drawn.layer, 'AcDbText'),
        ...at(10, place),
        [40, real(drawn.height)],
        said(1, drawn.text),
        ...(drawn.upwards ? [[50, real(90)] as const] : []),
        ...(drawn.anchored === 'start'
          ? []
          : [[72, drawn.anchored === 'middle' ? 1 : 2] as const, ...at(11, place)]),
        ...to.modern([100, 'AcDbText']),
        ...names,
      ];
    }
  }
}

function lineGroups(
  { layer, points, closed }: Extract<DxfDrawing, { kind: 'line' }>,
  owner: string,
  to: Numbering,
  names: readonly DxfGroup[],
): readonly DxfGroup[] {
  const [from, end] = points;
  if (points.length === 2 && !closed && from && end)
    return [...to.drawn('LINE', owner, layer, 'AcDbLine'), ...at(10, from), ...at(11, end), ...names];
  // Dashes go on round corners.
  const flags = (closed ? 1 : 0) + 128;
  if (to.version !== 'AC1009')
    return [
      ...to.drawn('LWPOLYLINE', owner, layer, 'AcDbPolyline'),
      [90, points.length],
      [70, flags],
      ...points.flatMap((p) => at(10, p).slice(0, 2)),
      ...names,
    ];
  return [
    [0, 'POLYLINE'],
    [8, layer],
    [66, 1],
    ...at(10, { x: 0, y: 0 }),
    [70, flags],
    ...names,
    ...points.flatMap((p): readonly DxfGroup[] => [[0, 'VERTEX'], [8, layer], ...at(10, p)]),
    [0, 'SEQEND'],
    [8, layer],
  ];
}

/** What a block asks to be told of each of its insertions; none of it shows. */
export const attributeDefinitions = (
  attributes: Attributes,
  owner: string,
  to: Numbering,
): readonly DxfGroup[] =>
  attributes.flatMap(([tag, value]) => [
    ...to.drawn('ATTDEF', owner, 'LABEL', 'AcDbText'),
    ...at(10, { x: 0, y: 0 }),
    [40, real(ATTRIBUTE_HEIGHT)],
    said(1, value),
    ...to.modern([100, 'AcDbAttributeDefinition']),
    [3, tag],
    [2, tag],
    [70, 1],
  ]);

/** The insertion of a block, with what is said of it. */
export function insertion(
  { name, attributes, place }: { name: string; attributes: Attributes; place: { x: number; y: number } },
  owner: string,
  to: Numbering,
): readonly DxfGroup[] {
  const handle = to.handle();
  return [
    ...to.begun('INSERT', owner, handle),
    ...to.modern([100, 'AcDbEntity']),
    [8, '0'],
    ...to.modern([100, 'AcDbBlockReference']),
    [66, 1],
    [2, name],
    ...at(10, place),
    ...attributes.flatMap(([tag, value]): readonly DxfGroup[] => [
      ...to.drawn('ATTRIB', handle, 'LABEL', 'AcDbText'),
      ...at(10, place),
      [40, real(ATTRIBUTE_HEIGHT)],
      said(1, value),
      ...to.modern([100, 'AcDbAttribute']),
      [2, tag],
      [70, 1],
    ]),
    ...to.begun('SEQEND', handle),
    ...to.modern([100, 'AcDbEntity']),
    [8, '0'],
  ];
}
