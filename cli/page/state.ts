import type { ScreenPiece } from '../../drafts/index.ts';
import type { AskedDraft } from './asked-draft.ts';
import { bodyData, emptyForm } from './body-form.ts';
import type { DraftPart } from './draft-parts.ts';
import type { GarmentChoices } from './garment-choices.ts';
import { type History, noHistory, type TypedChoices, type Work } from './history.ts';
import type { DraftAnswer, DraftRequest, MadeGarment } from './messages.ts';
import { emptyOwn, type OwnStates } from './own-states.ts';
import type { TakenFile } from './taken-file.ts';
import { type PageView, viewEntry } from './view-names.ts';
import { restored } from './views/code/own.ts';
import { codeKey } from './views/code/written-code.ts';
import { turnedTo } from './views/learn/own.ts';

/** All that the page shows is a function of this. */
export interface PageState extends Omit<Work, 'turned' | 'code'> {
  readonly view: PageView;
  /** Whether there is room for the drawing beside a form. */
  readonly wide: boolean;
  readonly history: History;
  /** What each view keeps for itself. */
  readonly own: OwnStates;
  /** Whether a link says her measurements too: only if she asks for it. */
  readonly linksBody: boolean;
  /** What is looked for among the choices. */
  readonly sought: string;
  readonly garments: readonly GarmentChoices[];
  /** The number of the newest draft that is wanted. */
  readonly asked: number;
  /** What that draft is to bring beyond its figures. */
  readonly wanted: readonly DraftPart[];
  /** Answers up to this number are of what has been deleted since. */
  readonly deleted: number;
  readonly answer: DraftAnswer | undefined;
  /** The last garment that could be drawn: it stays in sight while something stands in the way of the next. */
  readonly made: MadeGarment | undefined;
  /** The pieces as they were before what is being changed: drawn in grey under the new. */
  readonly earlier: readonly ScreenPiece[] | undefined;
  /** What became of a file, in a sentence. */
  readonly notice: string | undefined;
  /** Whether the browser keeps what is typed until tomorrow; that it does not comes out once there is something to keep. */
  readonly keeps: boolean;
  /** What that file has taken the place of. */
  readonly before: Work | undefined;
}

export const emptyState: PageState = {
  view: 'measure',
  wide: false,
  form: emptyForm,
  garment: 'dress',
  choices: {},
  byCode: false,
  history: noHistory,
  own: emptyOwn,
  linksBody: false,
  sought: '',
  garments: [],
  asked: 0,
  wanted: [],
  deleted: 0,
  answer: undefined,
  made: undefined,
  earlier: undefined,
  notice: undefined,
  keeps: true,
  before: undefined,
};

export const choicesOf = ({ choices, garment }: PageState): TypedChoices => choices[garment] ?? {};

/** What can be undone. */
export const workOf = ({ form, garment, choices, byCode, own: { code, learn } }: PageState): Work => ({
  form,
  garment,
  choices,
  byCode,
  turned: learn.turned,
  code,
});

/** The state with another work in the place of its own. */
export const withWork = (state: PageState, { turned, code, ...others }: Work): PageState => ({
  ...state,
  ...others,
  own: { ...state.own, code: restored(state.own.code, code), learn: turnedTo(state.own.learn, turned) },
});

/** The garments that can be chosen: with that of the code which draws now in the place of the one of its name. */
export function garmentsNow({ garments, byCode, own: { code } }: PageState): readonly GarmentChoices[] {
  const own = byCode && code.drawsViews?.key === codeKey(code) ? code.drawsViews.garment : undefined;
  return own ? [...garments.filter(({ name }) => name !== own.name), own] : garments;
}

/** The garment that is chosen, and what it leaves open; nothing before that is known. */
export function garmentNow(state: PageState): GarmentChoices | undefined {
  const { byCode, own, garment } = state;
  if (byCode && own.code.drawsViews?.garment) return own.code.drawsViews.garment;
  return state.garments.find(({ name }) => name === garment);
}

/** Whether the drawing stands beside the view that is shown. */
export const hasDrawingBeside = ({ view, wide }: PageState): boolean =>
  wide && viewEntry(view).beside === true;

/** What the view that is shown needs of a draft. */
export const partsShown = (state: PageState): readonly DraftPart[] =>
  hasDrawingBeside(state) ? ['lines', ...viewEntry(state.view).wants] : viewEntry(state.view).wants;

/** Whether nothing has been said about her yet. */
export const isUntouched = ({ form }: PageState): boolean =>
  Object.keys(form.sizes).length === 0 && Object.keys(form.rest).length === 0;

/** The draft that this state wants. */
export const draftRequest = (state: PageState): DraftRequest => ({
  kind: 'draft',
  number: state.asked,
  ...askedDraft(state),
  parts: state.wanted,
});

/** Whether what is shown is the newest that was asked for. */
export const isUpToDate = ({ answer, asked }: PageState): boolean => answer?.number === asked;

/** The garment of the newest draft, if every check holds. */
export function ready(state: PageState): MadeGarment | undefined {
  const made = isUpToDate(state) ? state.answer?.made : undefined;
  return made?.ok ? made : undefined;
}

/** The same once its files are written: what may be taken. */
export function taken(
  state: PageState,
): (MadeGarment & { readonly files: readonly TakenFile[] }) | undefined {
  const made = ready(state);
  return made?.parts.files ? { ...made, files: made.parts.files } : undefined;
}

/** The garment that the page stands for now. */
export const askedDraft = (state: PageState): AskedDraft => ({
  body: bodyData(state.form),
  garment: state.garment,
  choices: choicesOf(state),
  ...(state.byCode ? { code: codeKey(state.own.code) } : {}),
});
