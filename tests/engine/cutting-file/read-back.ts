import DxfParser, { type IEntity, type IInsertEntity } from 'dxf-parser';
import type { Flavour } from '../../../engine/cutting-file/flavour.ts';
import type { Curve } from '../../../engine/geometry/curve.ts';
import type { Garment } from '../../../engine/pattern/garment.ts';
import { pieceAsCut } from '../../../engine/reading/cutting-file/piece-as-cut.ts';
import { readBlocks } from '../../../engine/reading/cutting-file/read-blocks.ts';

/** The class itself is what the module exports, whatever its types say. */
const Parser = DxfParser as unknown as typeof DxfParser.default;

/** One piece as a cutting file has it: what is on which layer, and what is written on it. */
interface DrawnBlock {
  readonly layers: ReadonlySet<string>;
  readonly words: readonly string[];
}

/** A cutting file as a reader has it that is not ours, its coordinates as they are written. */
export function readCuttingFile(text: string) {
  const read = new Parser().parseSync(text);
  if (!read) throw new Error('not read');
  const blocks = Object.values(read.blocks).filter(({ name }) => !name.startsWith('*'));
  return {
    header: read.header,
    inserts: read.entities.filter((one): one is IInsertEntity => one.type === 'INSERT'),
    beside: read.entities.filter(({ type }) => type !== 'INSERT'),
    blocks: new Map(blocks.map((block) => [block.name, drawnBlock(block.entities)])),
  };
}

const drawnBlock = (entities: readonly IEntity[]): DrawnBlock => ({
  layers: new Set(entities.filter(isLine).map(({ layer }) => layer)),
  words: entities.flatMap((one) => (one.type === 'TEXT' ? [(one as IEntity & { text: string }).text] : [])),
});

const isLine = ({ type }: IEntity): boolean => ['LINE', 'POLYLINE', 'LWPOLYLINE', 'SPLINE'].includes(type);

/**
 * A garment whose every stitching line, fold and level is as the file has it, and nothing else is known of these; and the
 * same of the whole pieces that are cut. What no line can say, which edges are sewn together, stays as it was drafted.
 */
export function garmentIn(
  garment: Garment,
  text: string,
  flavour: Flavour,
): { readonly drawn: Garment; readonly whole: Garment; readonly cut: ReadonlyMap<string, readonly Curve[]> } {
  const blocks = [...readBlocks(text).blocks.values()];
  const pieces = garment.pieces.map((piece, i) => {
    const block = blocks[i];
    if (!block) throw new Error(`no block for ${piece.name}`);
    return pieceAsCut(piece, block, flavour);
  });
  return {
    drawn: { ...garment, pieces: pieces.map(({ drawn }) => drawn) },
    whole: { ...garment, pieces: pieces.map(({ whole }) => whole) },
    cut: new Map(pieces.map(({ drawn, cut }) => [drawn.name, cut])),
  };
}
