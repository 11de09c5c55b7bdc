import { type BodyForm, bodyData, emptyForm } from './body-form.ts';
import type { DraftAnswer, DraftRequest, GarmentChoices, MadeGarment } from './messages.ts';

export const pageViews = ['measure', 'choose', 'pieces', 'checks', 'take'] as const;

export type PageView = (typeof pageViews)[number];

/** Choices that were made, as they were typed, by name. */
export type TypedChoices = Readonly<Record<string, string>>;

/** All that the page shows is a function of this. */
export interface PageState {
  readonly view: PageView;
  /** Whether there is room for the drawing beside a form. */
  readonly wide: boolean;
  readonly form: BodyForm;
  /** What was in the form before a file was opened over it. */
  readonly before: BodyForm | undefined;
  readonly garment: string;
  /** By garment: each keeps its own. */
  readonly choices: Readonly<Record<string, TypedChoices>>;
  /** The piece that is shown alone, by its file. */
  readonly piece: string | undefined;
  readonly zoom: number;
  /** What is looked for among the choices. */
  readonly sought: string;
  readonly garments: readonly GarmentChoices[];
  /** The number of the newest draft that is wanted. */
  readonly asked: number;
  /** Answers up to this number are of what has been deleted since. */
  readonly deleted: number;
  readonly answer: DraftAnswer | undefined;
  /** The last garment that could be drawn: it stays in sight while something stands in the way of the next. */
  readonly made: MadeGarment | undefined;
  /** What became of a file, in a sentence. */
  readonly notice: string | undefined;
}

export const emptyState: PageState = {
  view: 'measure',
  wide: false,
  form: emptyForm,
  before: undefined,
  garment: 'dress',
  choices: {},
  piece: undefined,
  zoom: 1,
  sought: '',
  garments: [],
  asked: 0,
  deleted: 0,
  answer: undefined,
  made: undefined,
  notice: undefined,
};

export const choicesOf = ({ choices, garment }: PageState): TypedChoices => choices[garment] ?? {};

/** Whether nothing has been said about her yet. */
export const isUntouched = ({ form }: PageState): boolean =>
  Object.keys(form.sizes).length === 0 && Object.keys(form.rest).length === 0;

/** Whether each piece is wanted as a file of its own. */
export const wantsPieces = ({ view }: PageState): boolean => view === 'pieces' || view === 'take';

/** The draft that this state wants. */
export const draftRequest = (state: PageState): DraftRequest => ({
  kind: 'draft',
  number: state.asked,
  body: bodyData(state.form),
  garment: state.garment,
  choices: choicesOf(state),
  pieces: wantsPieces(state),
});

/** Whether what is shown is the newest that was asked for. */
export const isUpToDate = ({ answer, asked }: PageState): boolean => answer?.number === asked;

/** The garment of the newest draft, with its files, if every check holds: what may be taken. */
export const taken = (state: PageState): MadeGarment | undefined =>
  isUpToDate(state) && state.answer?.made?.ok ? state.answer.made : undefined;
