import type { AskedDraft } from '../asked-draft.ts';
import { fileWord } from '../file-word.ts';
import type { PageIssue } from '../page-issue.ts';
import { type Takeable, takeables } from '../takeables.ts';
import { type TakenBytes, takenBytes } from '../taken-file.ts';
import { madeDraft, refusal } from './made-draft.ts';
import { writtenOf } from './writers.ts';
import { zipFile } from './zip-file.ts';

export interface TakeRequest {
  readonly kind: 'take';
  /** Told again with every answer. */
  readonly number: number;
  readonly asked: AskedDraft;
  readonly writings: readonly Takeable[];
  /** The paper of the pattern: `a4`, `roll:914`. */
  readonly paper: string;
  /** All in one file. */
  readonly zip: boolean;
}

export type TakeAnswer = TakenAnswer | TakingAnswer;

/** What is written, or why it is not. */
export interface TakenAnswer {
  readonly kind: 'taken';
  readonly number: number;
  readonly handed: readonly TakenBytes[];
  readonly issues: readonly PageIssue[];
}

/** How far it is. */
export interface TakingAnswer {
  readonly kind: 'taking';
  readonly number: number;
  readonly done: number;
  readonly of: number;
  readonly what: string;
}

/** Writes what is asked for, and says on the way what it is at. */
export async function take(request: TakeRequest, tell: (answer: TakeAnswer) => void): Promise<void> {
  const { number, asked, writings: wanted, paper, zip } = request;
  try {
    const drafted = await madeDraft(asked);
    const files: TakenBytes[] = [];
    const begin = (done: number): void => {
      const next = wanted[done];
      if (next) tell({ kind: 'taking', number, done, of: wanted.length, what: takeables[next].words });
    };
    let done = 0;
    begin(done);
    for await (const written of writtenOf(wanted, drafted, { body: asked.body, paper })) {
      files.push(...takenBytes(written));
      begin(++done);
    }
    const { garment } = drafted.made;
    const called = [garment.name, fileWord(garment.body)].filter(Boolean).join('-for-');
    tell({ kind: 'taken', number, handed: zip ? [zipFile(`${called}.zip`, files)] : files, issues: [] });
  } catch (error) {
    tell({ kind: 'taken', number, handed: [], issues: refusal(error) });
  }
}
