import { type Curve, type Line, withEnds } from '../geometry/curve.ts';
import { distance, type Point, vectorBetween } from '../geometry/point.ts';
import { COINCIDENCE, SLIVER } from '../geometry/tolerance.ts';
import { cross, dot, unit } from '../geometry/vector.ts';

/** Curves and points linked up to one chain, by straight lines wherever they do not touch; without slivers. */
export function linked(stops: readonly (Curve | Point)[]): readonly Curve[] {
  const first = stops[0];
  if (!first) return [];
  const start = 'kind' in first ? first.from : first;
  const chain: Curve[] = [];
  const here = (): Point => chain.at(-1)?.to ?? start;
  const go = (to: Point): void => {
    if (distance(here(), to) <= SLIVER) return;
    const last = chain.at(-1);
    if (last?.kind === 'line' && runsOn(last, to))
      chain[chain.length - 1] = { kind: 'line', from: last.from, to };
    else chain.push({ kind: 'line', from: here(), to });
  };
  for (const stop of stops) {
    if (!('kind' in stop)) go(stop);
    else {
      go(stop.from);
      if (stop.kind === 'line') go(stop.to);
      else if (distance(stop.from, stop.to) > SLIVER) chain.push(withEnds(stop, here(), stop.to));
    }
  }
  return chain;
}

/** As `linked`, and back to where it began. */
export function linkedRound(stops: readonly (Curve | Point)[]): readonly Curve[] {
  const first = stops[0];
  if (!first) return [];
  const start = 'kind' in first ? first.from : first;
  const chain = linked([...stops, start]);
  const [head, last] = [chain[0], chain.at(-1)];
  if (!head || !last) return [];
  if (head !== last && head.kind === 'line' && last.kind === 'line' && runsOn(last, head.to)) {
    return [{ kind: 'line', from: last.from, to: head.to }, ...chain.slice(1, -1)];
  }
  return [...chain.slice(0, -1), withEnds(last, last.from, start)];
}

/** Whether a line would go on straight to a place. */
function runsOn(line: Line, to: Point): boolean {
  const along = unit(vectorBetween(line.from, line.to));
  const on = vectorBetween(line.to, to);
  return dot(along, on) > 0 && Math.abs(cross(along, on)) <= COINCIDENCE;
}
