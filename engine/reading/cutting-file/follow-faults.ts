import type { DxfBlock, DxfLine } from '../../cutting-file/drawn.ts';
import { type Point, point } from '../../geometry/point.ts';
import { strayOf } from '../../geometry/stray.ts';
import type { Issue } from '../../issue.ts';
import { inDegrees, inMm } from '../../text/figure.ts';
import type { ReadBlock, ReadLine } from './read-blocks.ts';

/** How far a polyline may lie from the curves that it was drawn for, mm. */
const mostApart = 0.05;

/** How far the direction of a straight may lie outside all that the curve has over it, degrees: as a corner inside a curve is not seen. */
const mostTurned = 0.06;

/**
 * Polylines of a block, as they are read, that do not follow the curves they were drawn for: farther off than 0.05 mm, or at any corner
 * in another direction than the curve has there. On each layer they are as many as were drawn, in the same order.
 */
export function followFaults(block: DxfBlock, read: ReadBlock | undefined): readonly Issue[] {
  const drawn = new Map<string, DxfLine[]>();
  for (const one of block.drawn)
    if (one.kind === 'line') drawn.set(one.layer, [...(drawn.get(one.layer) ?? []), one]);
  return Array.from(drawn).flatMap(([layer, lines]) => {
    const there = (read?.layers.get(layer) ?? []).filter(isPolyline);
    if (there.length !== lines.length)
      throw new Error(
        `${block.name} holds ${there.length} lines on ${layer}, and ${lines.length} were drawn`,
      );
    return lines.flatMap((line, i) => faultsOf(block.name, line, there[i]));
  });
}

const isPolyline = ({ curves }: ReadLine): boolean => curves.every(({ kind }) => kind === 'line');

function faultsOf(
  block: string,
  { layer, names, curves }: DxfLine,
  read: ReadLine | undefined,
): readonly Issue[] {
  const [first] = read?.curves ?? [];
  const corners = first && read ? [first.from, ...read.curves.map(({ to }) => to)].map(up) : [];
  const stray = strayOf(corners, curves);
  const { apart } = stray;
  const turned = (stray.turned * 180) / Math.PI;
  const what = `${block}, ${names[0] ?? layer}`;
  const off = (message: string, value: number, limits: Issue['limits']): Issue => ({
    code: 'cutting-file-off',
    severity: 'error',
    path: what,
    message: `In the cutting file the line “${what}” ${message} the curve that was drafted.`,
    value,
    ...(limits && { limits }),
  });
  return [
    ...(apart <= mostApart ? [] : [off(`lies ${inMm(apart)} from`, apart, { max: mostApart, unit: 'mm' })]),
    ...(turned <= mostTurned
      ? []
      : [off(`turns by ${inDegrees(turned)} from`, turned, { max: mostTurned, unit: 'degrees' })]),
  ];
}

/** As in the file, y up. */
const up = ({ x, y }: Point): Point => point(x, -y);
