import type { MeasurementName, Styling } from '../../drafts/index.ts';
import type { AskedDraft } from './asked-draft.ts';
import type { DraftPart, DraftParts } from './draft-parts.ts';
import type { GarmentChoices } from './garment-choices.ts';
import type { OwnDraftAnswer, OwnDraftRequest } from './own-draft/messages.ts';
import type { PageIssue } from './page-issue.ts';
import type { FitAnswer, FitRequest } from './requests/fit.ts';
import type { LayAnswer, LayRequest } from './requests/lay-messages.ts';
import type { LessonAnswer, LessonRequest } from './requests/lesson.ts';
import type { LinkAnswer, LinkRequest } from './requests/link.ts';
import type { OpenAnswer, OpenRequest } from './requests/open.ts';
import type { PicturesAnswer, PicturesRequest } from './requests/pictures.ts';
import type { MovedMeasurement } from './requests/reconciled.ts';
import type { SizesAnswer, SizesRequest } from './requests/sizes-messages.ts';
import type { StudyAnswer, StudyRequest } from './requests/study.ts';
import type { TakeAnswer, TakeRequest } from './requests/take.ts';
import type { WearAnswer, WearRequest } from './requests/wear-messages.ts';
import type { WriteAnswer, WriteRequest } from './requests/write.ts';

/** What the page asks of a worker: one kind a file of `requests`. Plain data, as everything that passes between them. */
export type PageRequest =
  | DraftRequest
  | FitRequest
  | LayRequest
  | LessonRequest
  | LinkRequest
  | OpenRequest
  | OwnDraftRequest
  | PicturesRequest
  | SizesRequest
  | StudyRequest
  | TakeRequest
  | WearRequest
  | WriteRequest;

/** What a worker answers; lengths are texts in the reader's unit. */
export type PageAnswer =
  | { readonly kind: 'garments'; readonly garments: readonly GarmentChoices[] }
  | DraftAnswer
  | FitAnswer
  | LayAnswer
  | LessonAnswer
  | LinkAnswer
  | OpenAnswer
  | OwnDraftAnswer
  | SizesAnswer
  | TakeAnswer
  | WearAnswer
  | WriteAnswer
  | StudyAnswer
  | PicturesAnswer
  | RefusedAnswer;

/** The key of the code that a request wants drawn by, where it wants any. */
export function codeAsked(request: PageRequest): string | undefined {
  if ('asked' in request) return request.asked.code;
  return 'code' in request ? request.code : undefined;
}

export interface DraftRequest extends AskedDraft {
  readonly kind: 'draft';
  /** Counted up, so that an answer can be known for the newest. */
  readonly number: number;
  /** What is wanted beyond the figures. */
  readonly parts: readonly DraftPart[];
}

/** Said where a request of any kind comes to nothing. */
export interface RefusedAnswer {
  readonly kind: 'refused';
  /** The kind of what was asked; none where nothing was. */
  readonly asked?: PageRequest['kind'];
  readonly message: string;
}

export interface DraftAnswer {
  readonly kind: 'drafted';
  readonly number: number;
  /** Every measurement, where the body can be read. */
  readonly sizes?: Readonly<Record<MeasurementName, KnownSize>>;
  readonly issues: readonly PageIssue[];
  /** What contradicts others, and what is more likely, where anything does. */
  readonly reconciled?: readonly MovedMeasurement[];
  /** None where nothing could be drawn. */
  readonly made?: MadeGarment;
  /** Where nothing could: what is wanted of the last that could be drawn, and has not been told yet. */
  readonly ofLast?: Partial<DraftParts>;
}

/** One measurement with where it came from, in words. */
export interface KnownSize {
  readonly text: string;
  readonly from: 'measured' | 'reconciled' | 'derived' | 'estimated';
  /** How far off an estimate may be. */
  readonly spread?: string;
}

export interface MadeGarment {
  readonly ok: boolean;
  /** Whether its sheet was written and walked again; else it was checked as it was drafted. */
  readonly proven: boolean;
  readonly garment: string;
  readonly title: string;
  readonly body: string;
  readonly units: 'mm' | 'in';
  readonly styling: Styling;
  readonly pieces: readonly MadePiece[];
  readonly checks: CheckRows;
  /** Only those with which anything is. */
  readonly wrong: readonly WrongPiece[];
  /** What else was wanted. */
  readonly parts: Partial<DraftParts>;
}

export interface MadePiece {
  readonly number: number;
  readonly name: string;
  readonly cut: string;
}

/** What is wrong with a piece. */
export interface WrongPiece {
  readonly piece: string;
  /** What the checks found, each in a sentence. */
  readonly fails: readonly string[];
  /** Shapes outside their bands: what each comes to, and what is usual. */
  readonly outside: readonly { readonly shape: string; readonly figure: string }[];
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
  /** The lines on the drawing that it is a figure of. */
  readonly places: readonly DrawnPlace[];
}

/** A line of a piece by its name, or all of the piece. */
export interface DrawnPlace {
  readonly piece: string;
  readonly line?: string;
}
