import * as library from '../../../../drafts/index.ts';
import { Unusable } from '../../../input/unusable.ts';
import { checkedDraft } from '../../../own-draft/checked-draft.ts';
import { importedBy } from '../../../own-draft/draft-files.ts';
import { type DraftSource, sourcePlaces } from '../../../own-draft/source-places.ts';
import type { DrawingAnswer, DrawingQuestion } from '../../own-draft/questions.ts';
import { inPageWords } from '../../requests/in-page-words.ts';
import { lessonOf } from '../learn/lesson.ts';
import type { RunAnswer, RunQuestion } from './questions.ts';
import { type FileStarts, placeOfLine } from './script-lines.ts';

const {
  engineParts,
  evaluate,
  evaluateRead,
  messageOf,
  notchesOf,
  provenSheet,
  sensitivities,
  trialCases,
  verdictOf,
  withLengthsIn,
  withRulesTurned,
} = library;

/** A file of a draft as the linker made it. */
type FileFunction = (exports: Record<string, unknown>, require: (specifier: string) => unknown) => void;

/** What a linked script leaves: its files, and the line on which each begins. */
export interface LinkedDraft {
  readonly draftFiles?: Readonly<Record<string, FileFunction>>;
  readonly draftStarts?: FileStarts;
}

type Draft = ReturnType<typeof checkedDraft>;

/** Loads the draft of a linked script; every question is answered, be it with what is wrong. */
export function runDraft({
  draftFiles = {},
  draftStarts = [],
}: LinkedDraft): (question: RunQuestion | DrawingQuestion) => RunAnswer | DrawingAnswer {
  const source = sourceOf(draftFiles, draftStarts);
  const [first = ''] = Object.keys(draftFiles);
  let draft: Draft | undefined;
  let broken: readonly library.Issue[] = [];
  try {
    draft = checkedDraft(loader(draftFiles)(first), first, source);
  } catch (error) {
    broken = error instanceof Unusable ? error.issues : [source.mistake(error)];
  }
  return (question) => {
    if (question.kind === 'describe' || question.kind === 'draw' || question.kind === 'sensitivities')
      return drawingAnswer(draft, broken, question);
    if (question.kind === 'cases')
      return {
        kind: 'cases',
        cases: draft ? trialCases(draft.choices, question.bodies, { tries: 0, seed: 1 }) : [],
      };
    const nothing = { name: draft?.name ?? '', title: draft?.title ?? '' };
    if (question.kind === 'try')
      return draft
        ? { kind: 'tried', ...plain(verdictOf(draft, question)) }
        : { kind: 'tried', outcome: 'thrown', issues: plainIssues(broken, 'mm') };
    if (!draft) return { kind: 'drafted', ...nothing, ok: false, issues: plainIssues(broken, 'mm') };
    try {
      return draftedFor(draft, question);
    } catch (error) {
      return { kind: 'drafted', ...nothing, ok: false, issues: plainIssues([source.mistake(error)], 'mm') };
    }
  };
}

/** Answers a worker that draws by the draft: with what it says of itself and its garments, and not with what is to be held of them. */
function drawingAnswer(
  draft: Draft | undefined,
  broken: readonly library.Issue[],
  question: DrawingQuestion,
): DrawingAnswer {
  const failed = { ok: false, issues: broken } as const;
  switch (question.kind) {
    case 'describe': {
      if (!draft) return { kind: 'described', issues: broken };
      const { name, title, choices, shapedBy } = draft;
      return { kind: 'described', garment: { name, title, choices, shapedBy }, issues: [] };
    }
    case 'sensitivities':
      return {
        kind: 'sensed',
        found: draft ? sensitivities(draft, question.body, question.styling) : failed,
      };
    case 'draw': {
      const { body, styling, turned } = question;
      const drawn = draft ? withRulesTurned(turned, () => draft.draw(body, styling)) : failed;
      if (drawn.ok || !draft) return { kind: 'drawn', drawn };
      // Why it cannot be drawn is looked for where its sketches are.
      const { issues } = withRulesTurned(turned, () => evaluateRead(draft, body, styling));
      return { kind: 'drawn', drawn: { ok: false, issues } };
    }
  }
}

function draftedFor(
  draft: Draft,
  { body, choices, turned }: Extract<RunQuestion, { kind: 'draft' }>,
): RunAnswer {
  const { name, title } = draft;
  const units = body.units === 'in' ? 'in' : 'mm';
  // A choice of the garment that this draft does not leave open is passed over.
  const known = Object.fromEntries(
    Object.entries(choices).filter(([choice]) => draft.choices.some((each) => each.name === choice)),
  );
  const made = withRulesTurned(turned, () => evaluate(draft, body, known));
  if (!made.ok) return { kind: 'drafted', name, title, ok: false, issues: plainIssues(made.issues, units) };
  const { sheet, report } = provenSheet(made.value, {
    date: undefined,
    units,
    notches: notchesOf(made.value.styling),
  });
  const lesson = lessonOf(made.value, draft.choices, units);
  return {
    kind: 'drafted',
    name,
    title,
    ok: report.ok,
    issues: plainIssues(report.issues, units),
    sheet,
    lesson,
  };
}

const plain = ({ outcome, issues }: library.Verdict) => ({ outcome, issues: plainIssues(issues, 'mm') });

const plainIssues = (issues: readonly library.Issue[], units: 'mm' | 'in') =>
  issues.map(({ code, severity, path, message, source }) => ({
    code,
    severity,
    path,
    message: inPageWords(code, withLengthsIn(message, units)),
    ...(source ? { source: { ...source } } : {}),
  }));

/** What a draft imports of the program; a name that there is not is said at once. */
const program = new Proxy<Record<string, unknown>>(
  { ...library, ...engineParts },
  {
    get: (known, name) => {
      if (typeof name !== 'string' || name in known || name === '__esModule') return known[String(name)];
      throw new Error(`There is no “${name}” to import from the program.`);
    },
  },
);

/** Runs a file when it is first asked for, and hands on what it exports. */
function loader(files: Readonly<Record<string, FileFunction>>): (file: string) => Record<string, unknown> {
  const names = new Set(Object.keys(files));
  const loaded = new Map<string, Record<string, unknown>>();
  const load = (file: string): Record<string, unknown> => {
    const known = loaded.get(file);
    if (known) return known;
    const exports: Record<string, unknown> = {};
    loaded.set(file, exports);
    files[file]?.(exports, (specifier) => {
      const found = importedBy(file, specifier, names);
      return typeof found === 'object' ? load(found.file) : program;
    });
    return exports;
  };
  return load;
}

/** Where things stand in the files: each is its function as it was written, line for line. */
function sourceOf(files: Readonly<Record<string, FileFunction>>, starts: FileStarts): DraftSource {
  return sourcePlaces({
    names: Object.keys(files),
    linesOf: (file) => String(files[file] ?? '').split('\n'),
    frameOf: (error) => {
      const stack = error instanceof Error ? (error.stack ?? '') : '';
      const last = starts.at(-1);
      const end = last ? last[1] + String(files[last[0]]).split('\n').length : 0;
      for (const [, text] of stack.matchAll(/blob:[^\s()]*?:(\d+):\d+/g)) {
        const line = Number(text);
        if (line < end) return placeOfLine(line, starts);
      }
      return undefined;
    },
    reason: messageOf,
  });
}
