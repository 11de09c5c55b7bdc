import type { Choice, Issue, MeasurementName, Styling } from '../../drafts/index.ts';

/** What the page asks of its worker. Plain data, as everything that passes between them. */
export type PageRequest =
  | DraftRequest
  | { readonly kind: 'open'; readonly file: string; readonly text: string }
  | { readonly kind: 'write'; readonly as: 'yaml' | 'json'; readonly body: BodyFields };

type BodyFields = Readonly<Record<string, unknown>>;

export interface DraftRequest {
  readonly kind: 'draft';
  /** Counted up, so that an answer can be known for the newest. */
  readonly number: number;
  readonly body: BodyFields;
  readonly garment: string;
  readonly choices: Readonly<Record<string, string>>;
  /** Whether each piece is wanted as a file of its own too. */
  readonly pieces: boolean;
}

/** What the worker answers; lengths are texts in the reader's unit. */
export type PageAnswer =
  | { readonly kind: 'garments'; readonly garments: readonly GarmentChoices[] }
  | DraftAnswer
  | { readonly kind: 'opened'; readonly file: string; readonly body: BodyFields }
  | { readonly kind: 'written'; readonly file: TakenFile }
  | { readonly kind: 'refused'; readonly message: string };

/** A garment that can be chosen, and what it leaves open. */
export interface GarmentChoices {
  readonly name: string;
  readonly title: string;
  readonly choices: readonly Choice[];
  readonly shapedBy: readonly MeasurementName[];
}

export interface DraftAnswer {
  readonly kind: 'drafted';
  readonly number: number;
  /** Every measurement, where the body can be read. */
  readonly sizes?: Readonly<Record<MeasurementName, KnownSize>>;
  readonly issues: readonly PageIssue[];
  /** None where nothing could be drawn. */
  readonly made?: MadeGarment;
}

/** One measurement with where it came from, in words. */
export interface KnownSize {
  readonly text: string;
  readonly from: 'measured' | 'reconciled' | 'derived' | 'estimated';
  /** How far off an estimate may be. */
  readonly spread?: string;
}

export type PageIssue = Pick<Issue, 'code' | 'severity' | 'path' | 'message'>;

export interface MadeGarment {
  readonly ok: boolean;
  readonly garment: string;
  readonly title: string;
  readonly body: string;
  readonly units: 'mm' | 'in';
  readonly styling: Styling;
  readonly pieces: readonly MadePiece[];
  readonly checks: CheckRows;
  /** `sheet.svg`, `report.json`, and the pieces where they were wanted. */
  readonly files: readonly TakenFile[];
}

export interface MadePiece {
  readonly number: number;
  readonly name: string;
  readonly cut: string;
}

export interface TakenFile {
  readonly name: string;
  readonly text: string;
}

/** The figures of the report as rows of a table, each ending with whether it is as it should be. */
export interface CheckRows {
  readonly girths: readonly CheckRow[];
  readonly seams: readonly CheckRow[];
  readonly joins: readonly CheckRow[];
  readonly shapes: readonly CheckRow[];
  readonly notches: number;
}

export interface CheckRow {
  readonly cells: readonly string[];
  readonly ok: boolean;
}
