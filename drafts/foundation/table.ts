import type { DraftingTable } from '../../engine/pattern/drafting-table.ts';
import type { foundationChoices } from './choices.ts';

/** What the foundation is drawn on: a drafting table with its choices. */
export type FoundationTable = DraftingTable<typeof foundationChoices>;
