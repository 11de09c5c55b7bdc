import type { Strand } from '../cloth/strings.ts';
import { edgeLength } from '../geometry/edge.ts';
import type { Garment } from '../pattern/garment.ts';
import type { Sewn } from './sewn.ts';

/** Force that would stretch a cord or a tape to twice its length, N: it gives by less than a thousandth under a dress. */
const CORD = 200;

/** The same of an elastic of about a centimetre, N; common practice, no source. */
const ELASTIC = 4;

/**
 * The elastic in a hem, the cord in a casing, or the tape over gathering rows: along the edge beside it, drawn up to the length that the draft
 * draws it up to. It runs in short strands, each drawn up alike, so the gathers are even.
 */
export function drawnCord(garment: Garment, { panels }: Sewn): readonly Strand[] {
  return panels.flatMap(({ panel, mesh, points, edgeStarts }): readonly Strand[] => {
    const casing = panel.piece.lines.find(({ kind }) => kind === 'casing');
    const drawn = garment.shapes.find(
      (shape) => shape.kind === 'drafted' && shape.piece === panel.name && /drawn along/.test(shape.name),
    );
    const edge = panel.piece.edges.find(({ turn }) => turn === 'fold' || turn === 'hem');
    if (!casing || !edge) return [];
    const elastic = garment.notions.find(({ name }) => name.startsWith(panel.name) && /elastic/.test(name));
    const lapped = elastic && (elastic.finished ?? elastic.length);
    const shorter = drawn?.kind === 'drafted' ? drawn.value : lapped ? edgeLength(edge) / lapped : undefined;
    if (shorter === undefined) return [];
    const stretch = elastic ? ELASTIC : CORD;
    const names = panel.piece.edges.map(({ name }) => name);
    const next = names[(names.indexOf(edge.name) + 1) % names.length] ?? '';
    const first = edgeStarts.get(edge.name) ?? 0;
    const end = edgeStarts.get(next) ?? 0;
    const count = (end - first + mesh.borderCount) % mesh.borderCount;
    return Array.from({ length: count }, (_, k) => {
      const [i, j] = [(first + k) % mesh.borderCount, (first + k + 1) % mesh.borderCount];
      const flat = Math.hypot(
        (mesh.points[2 * i] as number) - (mesh.points[2 * j] as number),
        (mesh.points[2 * i + 1] as number) - (mesh.points[2 * j + 1] as number),
      );
      return { a: points[i] as number, b: points[j] as number, length: flat / shorter, stretch };
    });
  });
}
