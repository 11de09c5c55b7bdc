import type { Issue } from '../../engine/issue.ts';
import { onlyTrue } from '../../engine/only-true.ts';
import { bodyFiles, namedBody } from '../draft/body-files.ts';
import type { FileLine } from '../input/lines.ts';
import { codeOf, drafted, faultOnBody, verdict } from '../many-bodies/walk-line.ts';
import { unitsShown } from '../output/reader.ts';
import type { OrderAnswer } from '../results/orders.ts';
import type { ExitCode } from '../session.ts';
import { type Order, readOrder } from './order.ts';
import { writtenOf } from './written.ts';

/** The answer to one line, as it is written, and what it means for the exit code. */
export interface AnsweredLine {
  readonly text: string;
  readonly code: ExitCode;
}

/** Drafts the order on a line and writes what it asks for. A broken one is answered like any other. */
export async function answerLine({ number, text }: Pick<FileLine, 'number' | 'text'>): Promise<AnsweredLine> {
  const read = readOrder(number, text);
  return asLine('issue' in read ? answerless(null, null, read.issue) : await answerOrder(read.order));
}

/** The answer where the program itself came to an end over a line. */
export function faultOf({ number, text }: Pick<FileLine, 'number' | 'text'>, error: unknown): AnsweredLine {
  const read = readOrder(number, text);
  const order = 'order' in read ? read.order : undefined;
  return asLine(answerless(order?.id ?? null, order?.draft.name ?? null, faultOnBody(error)));
}

const answerless = (id: string | null, garment: string | null, issue: Issue): OrderAnswer => ({
  id,
  garment,
  drafted: false,
  ...verdict(undefined, [issue]),
  files: {},
});

/** Drafts an order and makes the files it asks for; what fails a check of its own is refused, unless only its figures are wanted. */
export async function answerOrder({ id, body, draft, styling, write, paper }: Order): Promise<OrderAnswer> {
  const garment = draft.name;
  const made = drafted(draft, namedBody(body, id), styling);
  if (!made.ok) return { id, garment, drafted: false, ...verdict(undefined, made.issues), files: {} };
  const { report } = made.value;
  if (write.length === 0) return { id, garment, drafted: true, ...verdict(report, report.issues), files: {} };
  const as = { units: unitsShown(body) };
  const { files, report: found, unwritten } = await writtenOf(made.value, write, { ...as, paper });
  const kept = onlyTrue(draft, made.value, found, (other) => bodyFiles(other, as).report.ok);
  if (!kept.ok) return { id, garment, drafted: false, ...verdict(undefined, kept.issues), files: {} };
  const told = verdict(found, [...unwritten, ...found.issues]);
  const ok = told.ok && unwritten.length === 0;
  const written = Array.from(files, ([name, content]) => [name, stored(content)] as const);
  return { id, garment, drafted: true, ...told, ok, files: Object.fromEntries(written) };
}

const stored = (content: string | Uint8Array): string | { readonly base64: string } =>
  typeof content === 'string' ? content : { base64: Buffer.from(content).toString('base64') };

const asLine = (answer: OrderAnswer): AnsweredLine => ({
  text: `${JSON.stringify(answer)}\n`,
  code: codeOf(answer.drafted ? answer : undefined, answer.issues),
});
