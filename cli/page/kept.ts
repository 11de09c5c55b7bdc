import { bodyData, formFrom } from './body-form.ts';
import type { TypedChoices } from './history.ts';
import type { PageState } from './state.ts';
import { isView } from './view-names.ts';
import { codeKept, keptCode } from './views/code/kept-code.ts';
import { isOwnCode } from './views/code/written-code.ts';

/** What is kept in the browser until tomorrow, as a text. */
export const keptText = ({ form, garment, choices, byCode, view, own }: PageState): string =>
  JSON.stringify({ body: bodyData(form), garment, choices, byCode, view, code: keptCode(own.code) });

/** A state with what was kept; what cannot be read is passed over, for another version may have written it. */
export function withKept(state: PageState, text: string | null): PageState {
  const kept = parsed(text);
  const { body, garment, choices, view } = kept;
  const code = codeKept(kept.code);
  return {
    ...state,
    ...(isGroup(body) ? { form: formFrom(body) } : {}),
    ...(typeof garment === 'string' ? { garment } : {}),
    ...(isGroup(choices) ? { choices: choicesIn(choices) } : {}),
    own: { ...state.own, code },
    byCode: kept.byCode === true && isOwnCode(code) && !code.strange,
    view: isView(view) ? view : state.view,
  };
}

type Group = Readonly<Record<string, unknown>>;

const isGroup = (value: unknown): value is Group =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function parsed(text: string | null): Group {
  try {
    const kept: unknown = JSON.parse(text ?? '{}');
    return isGroup(kept) ? kept : {};
  } catch {
    return {};
  }
}

const choicesIn = (choices: Group): Readonly<Record<string, TypedChoices>> =>
  Object.fromEntries(
    Object.entries(choices).map(([garment, made]) => [
      garment,
      Object.fromEntries(
        Object.entries(isGroup(made) ? made : {}).filter(
          (entry): entry is [string, string] => typeof entry[1] === 'string',
        ),
      ),
    ]),
  );
