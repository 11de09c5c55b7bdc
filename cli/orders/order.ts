import { garments } from '../../drafts/garments.ts';
import type { Issue } from '../../engine/issue.ts';
import type { IssueCode } from '../../engine/issue-codes/issue-codes.ts';
import type { Draft } from '../../engine/pattern/draft.ts';
import { nearestWord } from '../../engine/text/nearest-word.ts';
import { readJsonLine } from '../input/json-line.ts';
import { order as schema, type Writing, writings } from '../results/orders.ts';
import { isSafeId, longestId } from './order-id.ts';

/** One body to be drafted, in what, and what is to be written of it. */
export interface Order {
  readonly id: string;
  readonly body: unknown;
  readonly draft: Draft;
  readonly styling: unknown;
  /** Each once, in the order in which they are written. */
  readonly write: readonly Writing[];
  readonly paper: string;
}

/** What the fields of an order should be. */
const fields = {
  id: `a name or a whole number, at most ${longestId} signs`,
  body: 'measurements by their names, as in a file of their own',
  garment: 'the name of a garment, see “bodkin list”',
  styling: 'choices by their names, see “bodkin list GARMENT”',
  write: `a list of ${writings.join(', ')}`,
  paper: 'a paper, such as a4 or roll:914',
} as const;

const isField = (word: unknown): word is keyof typeof fields =>
  typeof word === 'string' && Object.hasOwn(fields, word);

type Read = { readonly order: Order } | { readonly issue: Issue };

/** The order on a line, or why it is none. Measurements and choices are read later, when they are drafted. */
export function readOrder(number: number, text: string | undefined): Read {
  const refuse = (code: IssueCode, message: string): Read => ({
    issue: { code, severity: 'error', path: `line ${number}`, message: `Line ${number}: ${message}` },
  });
  const read = readJsonLine(number, text);
  if (read.issue) return { issue: read.issue };
  const parsed = schema.safeParse(read.data);
  if (!parsed.success) return refuse('not-an-order', fault(read.data));
  const { body, styling, write, paper = 'a4' } = parsed.data;
  const id = String(parsed.data.id);
  if (!isSafeId(id))
    return refuse(
      'order-id-unsafe',
      `“${id.slice(0, 40)}” is no name for a file. Write an id of at most ${longestId} plain letters, figures, hyphens, low lines and dots, with no dot at its ends.`,
    );
  const draft = garments.find(({ name }) => name === parsed.data.garment);
  if (!draft)
    return refuse(
      'unknown-garment',
      unknownWord('garment', parsed.data.garment, garmentNames, 'There is no'),
    );
  const asked = new Set(write ?? ['report']);
  const order = {
    id,
    body,
    draft,
    styling: styling ?? {},
    write: writings.filter((w) => asked.has(w)),
    paper,
  };
  return { order };
}

const garmentNames = garments.map(({ name }) => name);

/** What is wrong with data that is no order: the first thing that a reader would see. */
function fault(data: unknown): string {
  if (typeof data !== 'object' || data === null || Array.isArray(data))
    return `an order is one JSON object with ${Object.keys(fields).join(', ')}.`;
  const unknown = Object.keys(data).find((key) => !isField(key));
  if (unknown !== undefined) return unknownWord('field', unknown, Object.keys(fields), 'An order has no');
  const missing = (['id', 'body', 'garment'] as const).find((key) => !(key in data));
  if (missing) return `“${missing}” is missing: ${fields[missing]}.`;
  const found = schema.safeParse(data).error?.issues.map(({ path }) => path[0]) ?? [];
  const field = found.find(isField) ?? 'id';
  return `“${field}” should be ${fields[field]}.`;
}

function unknownWord(kind: string, word: string, known: readonly string[], says: string): string {
  const near = nearestWord(word, known);
  return `${says} ${kind} “${word.slice(0, 40)}”. ${near ? `Did you mean “${near}”?` : `Known are: ${known.join(', ')}.`}`;
}
