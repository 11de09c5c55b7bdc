import type { Body } from '../../../engine/body/body.ts';
import { readBody } from '../../../engine/body/read.ts';
import { bodyForm } from '../../../engine/form/body-form.ts';
import type { Form } from '../../../engine/form/form.ts';
import { shippedBody } from '../../drafts/drafted.ts';

/** A body as it is read from a file's words. */
export function bodyOf(data: unknown): Body {
  const read = readBody(data);
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join(' '));
  return read.value;
}

const forms = new Map<string, Form>();

/** The form of one of the bodies that ship, made once. */
export function formOf(name: string): Form {
  const known = forms.get(name) ?? bodyForm(bodyOf(shippedBody(name)));
  forms.set(name, known);
  return known;
}

/** The triangles of a form, each as the places of its corners' coordinates. */
export const trianglesOf = ({
  surface: { triangles },
}: Form): readonly (readonly [number, number, number])[] =>
  Array.from({ length: triangles.length / 3 }, (_, t) => [
    3 * (triangles[3 * t] ?? 0),
    3 * (triangles[3 * t + 1] ?? 0),
    3 * (triangles[3 * t + 2] ?? 0),
  ]);
