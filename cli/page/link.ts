import { type BodyFields, bodyData, formFrom } from './body-form.ts';
import type { TypedChoices, Work } from './history.ts';
import { isView, type PageView } from './view-names.ts';

/** What a link says: a view, a garment with its choices, and measurements only where they were asked for. */
export interface Linked {
  readonly view: PageView;
  readonly garment: string;
  readonly choices: TypedChoices;
  readonly form?: Work['form'];
}

/** No link is longer, nor says more choices, nor longer ones. */
const [longest, most, longestText] = [8000, 200, 40];

/** The part of a link behind the `#`. */
export function linkTo(view: PageView, { form, garment, choices }: Work, withBody: boolean): string {
  const said = new URLSearchParams({ ...choices[garment] });
  const body = withBody ? `&&${encodeURIComponent(JSON.stringify(bodyData(form)))}` : '';
  return `${view}/${encodeURIComponent(garment)}?${said}${body}`;
}

/** What the part behind the `#` says; nothing where it is no link to a view with choices. All of it is text, to be judged as typed. */
export function linkedIn(hash: string): Linked | undefined {
  const [, view, garment, said = '', , body] =
    /^#?(\w+)\/([^?]*)\?(.*?)(&&(.*))?$/s.exec(hash.slice(0, longest)) ?? [];
  if (garment === undefined || !isView(view)) return undefined;
  const choices = [...new URLSearchParams(said)]
    .slice(0, most)
    .map(([name, text]) => [name.slice(0, longestText), text.slice(0, longestText)] as const);
  const data = body === undefined ? undefined : dataOf(body);
  return {
    view,
    garment: decoded(garment),
    choices: Object.fromEntries(choices),
    ...(data ? { form: formFrom(data) } : {}),
  };
}

function dataOf(text: string): BodyFields | undefined {
  try {
    const data: unknown = JSON.parse(decodeURIComponent(text));
    return typeof data === 'object' && data !== null && !Array.isArray(data) ? { ...data } : undefined;
  } catch {
    return undefined;
  }
}

function decoded(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
