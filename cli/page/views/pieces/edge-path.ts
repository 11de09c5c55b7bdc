import type { ScreenPiece } from '../../../../drafts/index.ts';
import type { Heading, SeamPlace } from './walk.ts';

/** The lines of edges that were measured, by their data: the browser measures paths itself. */
const measured = new Map<string, SVGPathElement>();

/** So many are remembered. */
const most = 60;

function pathOf(piece: ScreenPiece | undefined, edge: string): SVGPathElement | undefined {
  const d = piece?.lines.find((line) => line.edge === edge)?.d;
  if (d === undefined) return undefined;
  const known = measured.get(d);
  if (known) return known;
  const path = document.createElementNS('http://www.w3.org/2000/svg', 'path');
  path.setAttribute('d', d);
  if (measured.size >= most) measured.clear();
  measured.set(d, path);
  return path;
}

/** A heading is taken over so much of an edge, mm. */
const stretch = 0.6;

/** The place on an edge, and which way the seam runs there. */
export function headingAt(pieces: readonly ScreenPiece[], place: SeamPlace): Heading | undefined {
  const path = pathOf(
    pieces.find(({ name }) => name === place.piece),
    place.edge,
  );
  if (!path) return undefined;
  const length = path.getTotalLength();
  const at = Math.min(length, Math.max(0, place.at));
  const here = path.getPointAtLength(at);
  const back = path.getPointAtLength(Math.max(0, at - stretch));
  const on = path.getPointAtLength(Math.min(length, at + stretch));
  const turn = place.reversed ? Math.PI : 0;
  return { x: here.x, y: here.y, angle: Math.atan2(on.y - back.y, on.x - back.x) + turn };
}

/** How far the waves of cloth that is drawn up stand out, at the most, and how long one is, mm. */
const [amplitude, wave] = [7, 9];

/**
 * The stretch of an edge that has been walked, from where the seam begins on it. Where cloth is drawn up to it, the line waves
 * as much as it is longer.
 */
export function walkedLine(
  pieces: readonly ScreenPiece[],
  place: SeamPlace,
  begins: number,
  ratio: number,
): string {
  const points: string[] = [];
  const length = Math.abs(place.at - begins);
  const count = Math.max(2, Math.ceil(length / 1.5));
  // A sine of so much height is about so much longer than its middle line.
  const high = ratio > 1 ? Math.min(amplitude, (wave * Math.sqrt(ratio - 1)) / Math.PI) : 0;
  for (let i = 0; i <= count; i++) {
    const at = begins + ((place.at - begins) * i) / count;
    const there = headingAt(pieces, { ...place, at });
    if (!there) return '';
    const out = high * Math.sin((2 * Math.PI * length * i) / count / wave);
    const x = there.x - Math.sin(there.angle) * out;
    const y = there.y + Math.cos(there.angle) * out;
    points.push(`${Math.round(x * 100) / 100} ${Math.round(y * 100) / 100}`);
  }
  return `M${points.join('L')}`;
}
