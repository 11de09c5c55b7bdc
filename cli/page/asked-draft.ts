import type { BodyFields } from './body-form.ts';

/** A garment as it is asked for: whose measurements, which garment, and its choices as they were typed. */
export interface AskedDraft {
  readonly body: BodyFields;
  readonly garment: string;
  readonly choices: Readonly<Record<string, string>>;
}
