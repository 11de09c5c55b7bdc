import type { TurnedRules } from '../../../../drafts/index.ts';
import type { DraftFiles } from '../../../own-draft/draft-files.ts';
import type { CodeProblem } from '../../requests/link.ts';
import type { RanDraft, TriedCase } from './questions.ts';
import type { CodeOf } from './written-code.ts';

/** What happens to an edited draft. */
export type Coding =
  /** The code of a garment or of a draft of one's own is there; what was changed of the same stays. */
  | {
      readonly does: 'begin';
      readonly of: CodeOf;
      readonly original: DraftFiles;
      readonly file: string;
      readonly strange: boolean;
    }
  | { readonly does: 'leave' }
  | { readonly does: 'take over rules'; readonly of: CodeOf; readonly turned: TurnedRules }
  | { readonly does: 'rules are taken over'; readonly files: DraftFiles; readonly file: string | undefined }
  | { readonly does: 'write'; readonly file: string; readonly text: string }
  | { readonly does: 'show file'; readonly file: string }
  | { readonly does: 'lead to'; readonly file: string; readonly line: number }
  /** Without a file: all of them. */
  | { readonly does: 'back to the original'; readonly file: string | undefined }
  | { readonly does: 'show'; readonly shows: 'code' | 'difference' }
  | { readonly does: 'check types'; readonly typed: boolean }
  | { readonly does: 'allow' }
  | { readonly does: 'go to step'; readonly step: number | undefined }
  | { readonly does: 'ran'; readonly key: string; readonly ran: RanDraft }
  | { readonly does: 'ended'; readonly key: string; readonly problem: CodeProblem }
  | { readonly does: 'hold'; readonly ends: boolean; readonly cases: readonly HeldCase[] }
  | { readonly does: 'held'; readonly at: number; readonly came: TriedCase }
  | { readonly does: 'let go' };

/** A draft that is held to everybody: the bodies, and what came of each so far. */
export interface Held {
  readonly ends: boolean;
  readonly cases: readonly HeldCase[];
}

export interface HeldCase {
  readonly name: string;
  /** The choices that are not as usual, in words; empty where all are. */
  readonly choices: string;
  readonly came: TriedCase | undefined;
}
