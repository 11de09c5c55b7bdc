import type { NestLine, WordTable } from '../../../drafts/index.ts';
import type { AskedDraft } from '../asked-draft.ts';
import type { PageIssue } from '../page-issue.ts';
import type { TakenBytes } from '../taken-file.ts';

/** A file that was chosen or dropped. */
export interface NamedText {
  readonly file: string;
  readonly text: string;
}

/** A size chart as its file holds it. */
export interface ChartFile extends NamedText {
  /** The body files that came with it. */
  readonly bodies: readonly NamedText[];
  /** The chart's unit, where it says none. */
  readonly units: string;
}

/** What is asked about sizes; `number` is told again with every answer. All but `nest` and `take` begin anew with the chart. */
export type SizesRequest = { readonly kind: 'sizes'; readonly number: number } & (
  | { readonly does: 'grade'; readonly asked: AskedDraft; readonly chart: ChartFile }
  | { readonly does: 'nearest'; readonly asked: AskedDraft; readonly chart: ChartFile }
  | ({ readonly does: 'nest' } & NestAsked)
  | { readonly does: 'take'; readonly line: NestLine }
);

/** One piece of the sizes graded last, laid on each other. */
export interface NestAsked {
  readonly piece: string;
  readonly size: string;
  readonly cup: string;
  /** All sizes of the cup, all cups of the size, or what stands beside the run. */
  readonly along: 'sizes' | 'cups';
  readonly line: NestLine;
  /** Whether the key stands beside it; else under it, so that a narrow screen is filled by the nest. */
  readonly beside: boolean;
}

export type SizesAnswer =
  | { readonly kind: 'grading'; readonly number: number; readonly done: number; readonly of: number }
  | {
      readonly kind: 'graded';
      readonly number: number;
      readonly grade: GradeShown | undefined;
      readonly issues: readonly PageIssue[];
      /** The body files that the chart names and that did not come with it. */
      readonly needs: readonly string[];
    }
  | { readonly kind: 'nest drawn'; readonly number: number; readonly nest: NestShown | undefined }
  | {
      readonly kind: 'nearest found';
      readonly number: number;
      readonly near: NearShown | undefined;
      readonly issues: readonly PageIssue[];
    }
  | { readonly kind: 'sizes written'; readonly number: number; readonly handed: readonly TakenBytes[] };

/** A grade as it is shown. */
export interface GradeShown {
  readonly garment: string;
  readonly chart: string;
  readonly source: string;
  readonly ok: boolean;
  readonly units: 'mm' | 'in';
  readonly sizes: readonly string[];
  /** The cups of each size; one without a name where there are none. */
  readonly cups: readonly string[];
  readonly middle: { readonly size: string; readonly cup: string };
  readonly pieces: readonly string[];
  readonly girths: WordTable;
  readonly even: WordTable;
}

export interface NestShown {
  /** What was asked for. */
  readonly asked: NestAsked;
  readonly svg: string;
  /** What is shown, in words. */
  readonly words: string;
  /** What each size adds to the one before, edge by edge and place by place; uneven rows are marked. */
  readonly rules: WordTable;
  readonly uneven: readonly number[];
}

export interface NearShown {
  readonly words: string;
  readonly units: 'mm' | 'in';
  readonly off: WordTable;
  readonly home: WordTable;
  readonly changes: readonly string[];
  readonly left: readonly string[];
}
