/** What every draft has to have. */
export const draftFields = ['name', 'title', 'choices', 'shapedBy', 'draw'] as const;

type DraftField = (typeof draftFields)[number];

interface FieldRule {
  readonly isFit: (value: unknown) => boolean;
  /** Of a list, each that stands in it. */
  readonly each?: (value: unknown) => boolean;
  /** How it is written. */
  readonly write: string;
}

const isText = (value: unknown): boolean => typeof value === 'string' && value !== '';

const rules: Readonly<Record<DraftField, FieldRule>> = {
  name: { isFit: isText, write: "name: 'my-apron', by which it is asked for" },
  title: { isFit: isText, write: "title: 'My apron', as it is called in words" },
  choices: {
    isFit: Array.isArray,
    each: (choice) => typeof choice === 'object' && choice !== null && isText(Reflect.get(choice, 'name')),
    write: 'choices: a list of them, each with its name, [] where it leaves none open',
  },
  shapedBy: {
    isFit: Array.isArray,
    each: isText,
    write: "shapedBy: a list of measurements, such as ['waistGirth'], [] where it uses none",
  },
  draw: {
    isFit: (value) => typeof value === 'function',
    write: 'draw: (body, styling, solver) => drawGarment(…)',
  },
};

/** What a draft lacks, or the first field that it has of another kind, as plain JavaScript may; nothing where all are there. */
export function unfitField(
  draft: object,
): { readonly field?: DraftField; readonly says: string } | undefined {
  const lacking = draftFields.filter((field) => Reflect.get(draft, field) === undefined);
  const [lacks] = lacking;
  if (lacks) return { says: `lacks ${lacking.join(', ')}. Write ${rules[lacks].write}.` };
  for (const field of draftFields) {
    const { isFit, each, write } = rules[field];
    const value: unknown = Reflect.get(draft, field);
    if (!isFit(value)) return { field, says: `has ${kindOf(value)} for “${field}”. Write ${write}.` };
    if (each && Array.isArray(value) && !value.every(each))
      return { field, says: `has something in “${field}” that is none of them. Write ${write}.` };
  }
  return undefined;
}

const kinds: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  boolean: 'true or false',
  function: 'a function',
};

/** What something is that should be something else. */
function kindOf(value: unknown): string {
  if (value === '') return 'an empty text';
  if (Array.isArray(value)) return 'a list';
  return value === null ? 'nothing' : (kinds[typeof value] ?? 'a record');
}
