import type { BodyFields } from './body-form.ts';

/** A garment as it is asked for: whose measurements, which garment, and its choices as they were typed. */
export interface AskedDraft {
  readonly body: BodyFields;
  readonly garment: string;
  readonly choices: Readonly<Record<string, string>>;
  /** The key of code that draws it, in the place of the program's own draft. */
  readonly code?: string;
}

/** Whether what was made is of another draft than is asked for now. */
export const isOutdated = (made: AskedDraft | undefined, asked: AskedDraft): boolean =>
  made !== undefined && JSON.stringify(made) !== JSON.stringify(asked);
