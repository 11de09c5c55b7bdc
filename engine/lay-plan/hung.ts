/** How pieces must lie on stripes that run one way so that the stripes meet at seams. mm. */
export interface Matching {
  /** By piece: how far behind the beginning of a repeat the origin of the piece lies, its grain along the cloth. */
  readonly phases: ReadonlyMap<string, number>;
  /** The seams at which stripes meet, and those that were looked at where they do not. */
  readonly matched: readonly string[];
  readonly unmatched: readonly string[];
  /** Eased or gathered seams at which they meet at one notch or end, and nowhere else. */
  readonly matchedOnce: readonly string[];
}

/** Where the two sides of a seam are to have the same place of a stripe: as far as `at` from the origin of each piece. */
export interface Meeting {
  readonly name: string;
  readonly a: MeetingPlace;
  readonly b: MeetingPlace;
  /** -1 where the two pieces are drawn as each other’s mirror image, so that what lies on one side of a stripe lies on the other. */
  readonly sense: 1 | -1;
  /** The seam is eased or gathered: stripes meet at this place of it, and nowhere else. */
  readonly once?: true;
}

export interface MeetingPlace {
  readonly piece: string;
  readonly at: number;
}

/** Stripes that miss each other by less look as if they met, mm (common practice, no source). */
export const unseen = 1;

/** What pieces that are given a place hang on. */
const cloth = '';

/** What a piece hangs on: it lies where that lies, or where its mirror image lies, and so far behind. */
interface Hold {
  readonly on: string;
  readonly sense: 1 | -1;
  readonly by: number;
}

/**
 * Hangs pieces on each other by the seams where stripes are to meet, in their order, until all hang together: a tree. A seam
 * that closes a ring is matched if it happens to be, to `unseen`. `placed` are the pieces whose place on the repeat is given; of
 * any group without one, one piece begins a repeat.
 */
export function hung(
  pieces: readonly string[],
  meetings: readonly Meeting[],
  repeat: number,
  placed: ReadonlyMap<string, number> = new Map(),
): Matching {
  const holds = new Map<string, Hold>(
    Array.from(placed, ([piece, by]): [string, Hold] => [piece, { on: cloth, sense: 1, by }]),
  );
  const held = (piece: string): Hold => {
    const own = holds.get(piece);
    if (!own) return { on: piece, sense: 1, by: 0 };
    const above = held(own.on);
    return { on: above.on, sense: above.sense === own.sense ? 1 : -1, by: own.sense * above.by + own.by };
  };
  const [matched, matchedOnce, unmatched]: [string[], string[], string[]] = [[], [], []];
  for (const { name, a, b, sense, once } of meetings) {
    const met = once ? matchedOnce : matched;
    const [onA, onB] = [held(a.piece), held(b.piece)];
    // What b must lie behind, less what it does, were both roots to begin a repeat.
    const apart = sense * (onA.by + a.at) - (onB.by + b.at);
    const together: 1 | -1 = onA.sense * sense === onB.sense ? 1 : -1;
    if (onA.on !== onB.on) {
      if (onB.on === cloth) holds.set(onA.on, { on: cloth, sense: together, by: -onA.sense * sense * apart });
      else holds.set(onB.on, { on: onA.on, sense: together, by: onB.sense * apart });
      met.push(name);
    } else {
      const known = together === 1 || onA.on === cloth;
      const meets = known && Math.abs(apart - repeat * Math.round(apart / repeat)) <= unseen;
      (meets ? met : unmatched).push(name);
    }
  }
  const phases = new Map(
    pieces.map((piece) => {
      const { by } = held(piece);
      return [piece, by - repeat * Math.floor(by / repeat)];
    }),
  );
  return { phases, matched, matchedOnce, unmatched };
}
