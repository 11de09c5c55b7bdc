import DxfParser, { type IEntity, type IInsertEntity, type IPoint } from 'dxf-parser';
import type { Curve } from '../../geometry/curve.ts';
import { type Point, point } from '../../geometry/point.ts';

/** The class itself is what the module exports, whatever its types say. */
const Parser = DxfParser as unknown as typeof DxfParser.default;

/** One piece as a cutting file has it; y down again, as in a draft. */
export interface ReadBlock {
  /** What is drawn, by layer. */
  readonly layers: ReadonlyMap<string, readonly ReadLine[]>;
}

/** A line, a polyline or a spline. */
export interface ReadLine {
  /** What stands beside it, such as `edge: side seam`, as the file has it. */
  readonly names: readonly string[];
  readonly curves: readonly Curve[];
}

/** Everything a reader gets who knows points, lines, polylines and splines, and nothing of garments. */
export interface ReadCuttingFile {
  /** By name. */
  readonly blocks: ReadonlyMap<string, ReadBlock>;
  /** Which block stands where, y down. */
  readonly inserted: readonly { readonly name: string; readonly at: Point }[];
  /** What stands beside the pieces. */
  readonly beside: ReadBlock;
  /** The number by which the header names the unit. */
  readonly unit: unknown;
}

/** Reads a cutting file by a reader that did not write it. Throws what that throws where it is no such file. */
export function readBlocks(text: string): ReadCuttingFile {
  const read = new Parser().parseSync(text);
  if (!read) throw new Error('it is empty');
  const isInsert = (one: IEntity): one is IInsertEntity => one.type === 'INSERT';
  return {
    blocks: new Map(
      Object.values(read.blocks)
        .filter(({ name }) => !name.startsWith('*'))
        .map(({ name, entities }) => [name, readBlock(entities)]),
    ),
    inserted: read.entities.filter(isInsert).map(({ name, position }) => ({ name, at: down(position) })),
    beside: readBlock(read.entities.filter((one) => !isInsert(one))),
    unit: read.header.$INSUNITS,
  };
}

function readBlock(entities: readonly IEntity[]): ReadBlock {
  const layers = new Map<string, ReadLine[]>();
  for (const entity of entities) {
    const curves = curvesOf(entity);
    if (curves.length === 0) continue;
    const line = { names: entity.extendedData?.customStrings ?? [], curves };
    const onLayer = layers.get(entity.layer);
    if (onLayer) onLayer.push(line);
    else layers.set(entity.layer, [line]);
  }
  return { layers };
}

const down = ({ x, y }: IPoint): Point => point(x, -y);

function curvesOf(entity: IEntity): readonly Curve[] {
  const { type } = entity;
  if (type === 'SPLINE') {
    const { controlPoints = [], knotValues } = entity as IEntity & {
      controlPoints?: IPoint[];
      knotValues: number[];
    };
    const [from, handle1, handle2, to] = controlPoints.map(down);
    if (!from || !handle1 || !handle2 || !to || knotValues.join('') !== '00001111')
      throw new Error('it holds a curve that is no cubic');
    return [{ kind: 'cubic', from, handle1, handle2, to }];
  }
  if (type !== 'LINE' && type !== 'POLYLINE' && type !== 'LWPOLYLINE') return [];
  const { vertices, shape } = entity as IEntity & { vertices: IPoint[]; shape?: boolean };
  const corners = vertices.map(down);
  const [first] = corners;
  return [...corners, ...(shape && first ? [first] : [])].slice(1).map((to, i): Curve => {
    return { kind: 'line', from: corners[i] ?? to, to };
  });
}
