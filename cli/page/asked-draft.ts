import { type BodyFields, bodyData } from './body-form.ts';
import { choicesOf, type PageState } from './state.ts';

/** A garment as it is asked for: whose measurements, which garment, and its choices as they were typed. */
export interface AskedDraft {
  readonly body: BodyFields;
  readonly garment: string;
  readonly choices: Readonly<Record<string, string>>;
}

/** What the page stands for now. */
export const askedDraft = (state: PageState): AskedDraft => ({
  body: bodyData(state.form),
  garment: state.garment,
  choices: choicesOf(state),
});
