import type { DraftPart } from './draft-parts.ts';

/** What is known of a view before its code is loaded. */
interface ViewEntry {
  /** Behind the `#` of the address. */
  readonly name: string;
  readonly title: string;
  /** The drawing stands beside it where there is room, and is then wanted of a draft too. */
  readonly beside?: true;
  /** What it shows of a draft beyond its figures. */
  readonly wants: readonly DraftPart[];
}

/** The views in the order in which they are offered. A new one has a line here and one in `views/table.ts`. */
export const viewEntries = [
  { name: 'measure', title: 'Measure', wants: [] },
  { name: 'choose', title: 'Choose', beside: true, wants: [] },
  { name: 'pieces', title: 'Pieces', wants: ['lines', 'seams'] },
  { name: 'checks', title: 'Checks', wants: ['lines'] },
  { name: 'worn', title: 'Worn', wants: [] },
  { name: 'sizes', title: 'Sizes', wants: [] },
  { name: 'cloth', title: 'Cloth', wants: ['cautions'] },
  { name: 'learn', title: 'Learn', wants: ['lesson'] },
  { name: 'code', title: 'Change the code', wants: [] },
  { name: 'take', title: 'Take', wants: ['files', 'cautions'] },
] as const satisfies readonly ViewEntry[];

export type PageView = (typeof viewEntries)[number]['name'];

const entries: ReadonlyMap<string, ViewEntry> = new Map(viewEntries.map((entry) => [entry.name, entry]));

export const isView = (name: unknown): name is PageView => typeof name === 'string' && entries.has(name);

export const viewEntry = (view: PageView): ViewEntry => entries.get(view) ?? viewEntries[0];
