import { DraftMistake, perhapsMeant } from '../../draft-mistake.ts';

/** Throws a `DraftMistake` for a relation or wish of a kind that is none: a compiler says so, plain JavaScript does not. */
export function checkKind(
  what: 'relation' | 'wish',
  { kind, name }: { readonly kind: string; readonly name: string },
  table: Readonly<Record<string, unknown>>,
): void {
  if (Object.hasOwn(table, kind)) return;
  const hint = perhapsMeant(kind, Object.keys(table));
  throw new DraftMistake(`“${name}” is a ${what} of the kind “${kind}”, which there is not.${hint}`, [
    name,
    kind,
  ]);
}
