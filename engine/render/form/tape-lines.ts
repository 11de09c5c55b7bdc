import type { Place, Tape } from '../../form/form.ts';
import { element, type Node } from '../markup.ts';
import type { IsSeen } from './depth.ts';
import { tenths } from './faces.ts';
import { type Seen, seenFrom, type ViewName } from './view.ts';

/** A tape lies this far in front of the surface it is drawn on, mm. */
const LIFT = 3;

/** No stretch of a drawn tape is longer, mm, so that it can go out of sight. */
const STRETCH = 6;

/** A tape as it is seen: the stretches in sight, and the place where a word for it should point. */
export interface SeenTape {
  readonly tape: Tape;
  readonly stretches: readonly (readonly Seen[])[];
  /** Its outermost places in sight, to the left and to the right. */
  readonly ends: readonly [left: Seen, right: Seen];
}

export function seenTape(tape: Tape, view: ViewName, isSeen: IsSeen): SeenTape | undefined {
  const stretches: Seen[][] = [];
  let now: Seen[] = [];
  // A tape down the middle of the back lies hollow between the blades; from the side it is shown all the same.
  const inMiddle = view === 'side' && tape.points.every(([x]) => x === 0);
  for (const place of closely(tape)) {
    const [right, up, near] = seenFrom(view, place);
    const seen: Seen = [right, up, near + LIFT];
    if (inMiddle || isSeen(seen)) now.push(seen);
    else {
      if (now.length > 1) stretches.push(now);
      now = [];
    }
  }
  if (now.length > 1) stretches.push(now);
  const all = stretches.flat();
  const [first] = all;
  if (!first) return undefined;
  const left = all.reduce((best, seen) => (seen[0] < best[0] ? seen : best), first);
  const right = all.reduce((best, seen) => (seen[0] > best[0] ? seen : best), first);
  return { tape, stretches, ends: [left, right] };
}

/** The tape's places with more between them. */
function closely({ points, closed }: Tape): readonly Place[] {
  const [first] = points;
  if (!first) return [];
  const round = closed ? [...points, first] : points;
  return round.flatMap((to, i): readonly Place[] => {
    const from = round[i - 1];
    if (!from) return [to];
    const length = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
    const parts = Math.max(1, Math.ceil(length / STRETCH));
    return Array.from({ length: parts }, (_, k): Place => {
      const t = (k + 1) / parts;
      return [
        from[0] + t * (to[0] - from[0]),
        from[1] + t * (to[1] - from[1]),
        from[2] + t * (to[2] - from[2]),
      ];
    });
  });
}

export const drawnTape = ({ stretches }: SeenTape, colour: string, width: number): Node =>
  element('path', {
    d: stretches
      .map((stretch) => `M${stretch.map(([right, up]) => `${tenths(right)} ${tenths(-up)}`).join('L')}`)
      .join(''),
    fill: 'none',
    stroke: colour,
    'stroke-width': String(width),
    'stroke-linejoin': 'round',
    'stroke-linecap': 'round',
  });
