import { boundingBox } from '../../geometry/bounds.ts';
import { point } from '../../geometry/point.ts';
import { type Transform, transformedCurve } from '../../geometry/transform.ts';
import { type FinishedPiece, lineAround } from '../finished-piece.ts';
import type { Ink } from '../ink.ts';
import type { Size } from '../layout.ts';
import type { Tile } from './tile-grid.ts';

/** How the tiles join: each with its name, and the pieces on them with their numbers; within `room`, from 0, 0. */
export function map(tiles: readonly Tile[], pieces: readonly FinishedPiece[], room: Size): readonly Ink[] {
  const right = Math.max(...tiles.map(({ cell }) => cell.right));
  const bottom = Math.max(...tiles.map(({ cell }) => cell.bottom));
  const scale = Math.min(room.width / right, room.height / bottom);
  const small: Transform = ({ x, y }) => point(x * scale, y * scale);
  return [
    ...tiles.flatMap((tile) => drawnTile(tile, small, scale)),
    ...pieces.flatMap((finished): readonly Ink[] => {
      const curves = lineAround(finished).map((curve) => transformedCurve(curve, small));
      const box = boundingBox(curves);
      const size = Math.min(4.5, (box.right - box.left) * 0.6, (box.bottom - box.top) * 0.6);
      const at = point((box.left + box.right) / 2, (box.top + box.bottom) / 2 + size / 3);
      return [
        { kind: 'chain', class: 'outline', curves, closed: true },
        { kind: 'words', text: String(finished.piece.number), at, size, bold: true, anchored: 'middle' },
      ];
    }),
  ];
}

function drawnTile({ name, cell }: Tile, small: Transform, scale: number): readonly Ink[] {
  const width = (cell.right - cell.left) * scale;
  const height = (cell.bottom - cell.top) * scale;
  const corner = small(point(cell.left, cell.top));
  const size = Math.min(2.8, height * 0.3, width * 0.3);
  const at = point(corner.x + 1, corner.y + 0.5 + size);
  return [
    { kind: 'box', class: 'tile', corner, width, height },
    { kind: 'words', text: name, at, size, pale: true },
  ];
}
