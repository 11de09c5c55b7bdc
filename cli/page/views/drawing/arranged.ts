import { type ScreenPiece, standInRows } from '../../../../drafts/index.ts';

/** Pieces side by side: how far each is moved from its own place, and the paper that takes them all, mm. */
export interface Arranged {
  readonly moves: ReadonlyMap<string, readonly [x: number, y: number]>;
  readonly width: number;
  readonly height: number;
}

/** White between pieces, mm. */
const gap = 30;

/** Papers are tried so many to the widest piece and to all of them in one row. */
const tries = 12;

/** Stands pieces in rows on a paper that best fills a window of so much width to height. */
export function arranged(pieces: readonly ScreenPiece[], aspect: number): Arranged {
  const narrowest = Math.max(0, ...pieces.map(({ width }) => width)) + 2 * gap;
  const widest = pieces.reduce((sum, { width }) => sum + width + gap, gap);
  let best: { readonly scale: number; readonly rows: ReturnType<typeof standInRows> } | undefined;
  for (let i = 0; i <= tries; i++) {
    const rows = standInRows(pieces, narrowest + ((widest - narrowest) * i) / tries, gap);
    const scale = Math.min(aspect / rows.paper.width, 1 / rows.paper.height);
    if (!best || scale > best.scale * 1.001) best = { scale, rows };
  }
  const { corners = [], paper = { width: 1, height: 1 } } = best?.rows ?? {};
  const moves = pieces.map(({ name, left, top }, i) => {
    const corner = corners[i] ?? { x: 0, y: 0 };
    return [name, [corner.x - left, corner.y - top]] as const;
  });
  return { moves: new Map(moves), ...paper };
}
