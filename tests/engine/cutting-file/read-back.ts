import DxfParser, { type IEntity, type IInsertEntity, type IPoint } from 'dxf-parser';
import type { Curve, Edge } from '../../../engine/geometry/curve.ts';
import { asCubic } from '../../../engine/geometry/evaluate.ts';
import { nearestOnEdge } from '../../../engine/geometry/nearest.ts';
import { type Point, point } from '../../../engine/geometry/point.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import type { InsideLine, Piece, PieceEdge } from '../../../engine/pattern/piece.ts';

/** The class itself is what the module exports, whatever its types say. */
const Parser = DxfParser as unknown as typeof DxfParser.default;

/** One piece as a cutting file has it, read by a reader that is not ours; y down again, as in a draft. */
export interface ReadBlock {
  readonly name: string;
  /** Curves by layer, and there by name; what has no name stands under the empty one. */
  readonly lines: ReadonlyMap<string, ReadonlyMap<string, readonly Curve[]>>;
  readonly words: readonly string[];
}

/** Everything a reader gets who knows points, lines, polylines and splines, and nothing of garments. */
export function readCuttingFile(text: string) {
  const read = new Parser().parseSync(text);
  if (!read) throw new Error('not read');
  const blocks = Object.values(read.blocks).filter(({ name }) => !name.startsWith('*'));
  const inserts = read.entities.filter((one): one is IInsertEntity => one.type === 'INSERT');
  return {
    header: read.header,
    layers: Object.keys(read.tables.layer.layers),
    inserts,
    beside: read.entities.filter(({ type }) => type !== 'INSERT'),
    blocks: new Map(blocks.map((block) => [block.name, readBlock(block.name, block.entities)])),
  };
}

function readBlock(name: string, entities: readonly IEntity[]): ReadBlock {
  const lines = new Map<string, Map<string, Curve[]>>();
  const words: string[] = [];
  for (const entity of entities) {
    if (entity.type === 'TEXT') words.push((entity as IEntity & { text: string }).text);
    const curves = curvesOf(entity);
    if (curves.length === 0) continue;
    const onLayer = lines.get(entity.layer) ?? new Map<string, Curve[]>();
    const own = nameOf(entity);
    onLayer.set(own, [...(onLayer.get(own) ?? []), ...curves]);
    lines.set(entity.layer, onLayer);
  }
  return { name, lines, words };
}

/** The name beside a line, without what kind of thing it names. */
function nameOf({ extendedData }: IEntity): string {
  const names: readonly string[] = extendedData?.customStrings ?? [];
  return names.find((one) => /^(edge|level|line): /.test(one))?.replace(/^\w+: /, '') ?? '';
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
      throw new Error('no cubic');
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

/**
 * A garment whose every stitching line, fold and level is as the file has it, and nothing else is known of these; and the
 * same of the whole pieces that are cut. What no line can say, which edges are sewn together, stays as it was drafted.
 */
export function garmentIn(
  garment: Garment,
  blocks: ReadonlyMap<string, ReadBlock>,
): { readonly drawn: Garment; readonly whole: Garment; readonly cut: ReadonlyMap<string, readonly Curve[]> } {
  const found = [...blocks.values()];
  const pieces = garment.pieces.map((piece, i) => ({ piece, block: found[i] }));
  const drawn = pieces.map(({ piece, block }) => (block ? drawnPiece(piece, block) : piece));
  const cut = new Map(pieces.map(({ piece, block }) => [piece.name, block?.lines.get('CUT')?.get('') ?? []]));
  const whole = drawn.map((piece, i): Piece => {
    const others = [...(pieces[i]?.block?.lines.get('STITCH') ?? [])].filter(([name]) =>
      name.endsWith(' (other half)'),
    );
    if (others.length === 0) return piece;
    return {
      ...piece,
      edges: runningOn([
        ...piece.edges.filter(({ turn }) => turn !== 'fold'),
        ...others.map(([name, curves]): PieceEdge => {
          const own = piece.edges.find((edge) => `${edge.name} (other half)` === name);
          if (!own) throw new Error(name);
          return { ...own, name, curves };
        }),
      ]),
    };
  });
  return { drawn: { ...garment, pieces: drawn }, whole: { ...garment, pieces: whole }, cut };
}

/** Edges of a whole piece, a hem and its other half as the one hem that they are. */
function runningOn(edges: readonly PieceEdge[]): readonly PieceEdge[] {
  const start = edges.findIndex(({ turn }, i) => turn !== 'hem' || edges.at(i - 1)?.turn !== 'hem');
  const joined: PieceEdge[] = [];
  for (const edge of [...edges.slice(start), ...edges.slice(0, start)]) {
    const last = joined.at(-1);
    if (last?.turn !== 'hem' || edge.turn !== 'hem') joined.push(edge);
    else joined[joined.length - 1] = { ...last, curves: [...last.curves, ...edge.curves] };
  }
  return joined;
}

function drawnPiece(piece: Piece, { lines }: ReadBlock): Piece {
  const of = (layer: string, name: string): readonly Curve[] => {
    const curves = lines.get(layer)?.get(name);
    if (!curves) throw new Error(`no ${name} on ${layer} in ${piece.name}`);
    return curves;
  };
  const edges = piece.edges.map((edge) => ({
    ...edge,
    curves: of(edge.turn === 'fold' ? 'FOLD' : 'STITCH', edge.name),
  }));
  const at = edges.findIndex(({ turn }) => turn === 'fold');
  const [drafted, fold] = [piece.edges[at], edges[at]];
  return {
    ...piece,
    edges,
    grain: endsOf(of('GRAIN', '').slice(0, 1)),
    lines: piece.lines.map((line): InsideLine => {
      if (line.kind !== 'level') return line;
      const whole = bent(of('LEVEL', line.name));
      return { ...line, curves: drafted && fold ? halfOf(whole, line, drafted, fold) : whole };
    }),
  };
}

/** Of a level that goes on across the fold the half that was drafted, which begins or ends there as it does in the draft. */
function halfOf(
  whole: readonly Curve[],
  { curves }: InsideLine,
  drafted: Edge,
  fold: Edge,
): readonly Curve[] {
  const isOn = (edge: Edge, p: Point | undefined): boolean =>
    p !== undefined && nearestOnEdge(edge, p).distance < 0.01;
  const joint = whole.slice(0, -1).findIndex(({ to }) => isOn(fold, to)) + 1;
  if (joint === 0) return whole;
  return isOn(drafted, curves[0]?.from) ? whole.slice(joint) : whole.slice(0, joint);
}

/** A level that bends is measured along itself; of straight lines only one that is written as cubics counts as such. */
const bent = (curves: readonly Curve[]): readonly Curve[] =>
  curves.length > 1 ? curves.map(asCubic) : curves;

const endsOf = (curves: readonly Curve[]) => ({
  from: curves[0]?.from ?? point(0, 0),
  to: curves.at(-1)?.to ?? point(0, 0),
});
