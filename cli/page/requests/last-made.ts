import type { DraftPart } from '../draft-parts.ts';
import type { QuickPart, QuickParts } from './parts.ts';

/** The last garment that could be drawn, as far as more of it can be wanted. */
interface LastMade {
  /** Makes more of it. */
  readonly more: (wanted: readonly QuickPart[]) => Partial<QuickParts>;
  /** What the page has of it. */
  readonly told: Set<DraftPart>;
}

let last: LastMade | undefined;

/** To be told of each garment that could be drawn, and which of its parts the page is told with it. */
export function wasMade(more: LastMade['more'], told: readonly DraftPart[]): void {
  last = { more, told: new Set(told) };
}

/**
 * Those parts of the last garment that the page has not been told, where something stands in the way of the next: it stays in
 * sight, maybe on a view that nobody looked at while it was the newest. Nothing of it is written any more.
 */
export function restOfLast(wanted: readonly DraftPart[]): Partial<QuickParts> {
  if (!last) return {};
  const { more, told } = last;
  const missing = wanted.filter(
    (part): part is QuickPart => part !== 'proof' && part !== 'files' && !told.has(part),
  );
  for (const part of missing) told.add(part);
  return more(missing);
}
