import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { javascript } from '@codemirror/lang-javascript';
import { bracketMatching, HighlightStyle, indentOnInput, syntaxHighlighting } from '@codemirror/language';
import { type Diagnostic, lintGutter, lintKeymap, setDiagnostics } from '@codemirror/lint';
import { getChunks, unifiedMergeView } from '@codemirror/merge';
import { highlightSelectionMatches, search, searchKeymap } from '@codemirror/search';
import { EditorState, type Extension, StateEffect, StateField } from '@codemirror/state';
import {
  Decoration,
  type DecorationSet,
  drawSelection,
  EditorView,
  highlightActiveLine,
  keymap,
  lineNumbers,
} from '@codemirror/view';
import { tags } from '@lezer/highlight';
import { nameAssist } from './names/assist.ts';
import type { KnownNames } from './names/known-names.ts';
import { nameAt } from './names/name-at.ts';
import type { NameMeaning } from './names/name-meaning.ts';
import { readAhead } from './names/read-ahead.ts';
import type { Stretch } from './names/read-code.ts';
import { type NameSlip, slipsIn } from './names/slips.ts';
import type { CodeIssue } from './questions.ts';
import type { TypedName, TypedPart, TypeProblem } from './types/messages.ts';

/** What an editor tells. */
export interface EditorEvents {
  readonly write: (text: string) => void;
  /** The line that the cursor has come to, from 1. */
  readonly at: (line: number) => void;
  /** The key that runs the code was pressed. */
  readonly run: () => void;
  /** What names may mean in the file, once that is known. */
  readonly known: () => KnownNames | undefined;
  /** What types say of the name at a place of the text as it is now; nothing where nobody asked for types. */
  readonly typed: (text: string, at: number) => Promise<TypedName | undefined>;
  /** What types let stand behind the dot before a place; nothing where nobody asked for types. */
  readonly parted: (text: string, at: number) => Promise<readonly TypedPart[]>;
  /** What the name means that the cursor is in. */
  readonly means: (meaning: NameMeaning | undefined) => void;
}

/** An editor of one file. */
export interface CodeEditor {
  /** Puts another file, or another text, into it; with `original` what differs from that is marked. */
  readonly show: (file: string, text: string, original: string | undefined) => void;
  readonly tell: (issues: readonly CodeIssue[]) => void;
  /** What types do not allow in the file while its text is `of`. */
  readonly type: (problems: readonly TypeProblem[], of: string | undefined) => void;
  /** Looks for names that there are not, once nobody has typed for a moment. */
  readonly look: () => void;
  /** Lights lines, and brings the first into sight where `reveal` says so; none without lines. */
  readonly light: (
    lines: { readonly from: number; readonly to: number } | undefined,
    reveal: boolean,
  ) => void;
  /** Brings the cursor to where a line begins, and that into sight. */
  readonly lead: (line: number) => void;
  readonly end: () => void;
}

/** Black on paper: what is said, what is computed and what is only a word of the language are told apart by weight and slant. */
const highlighting = HighlightStyle.define([
  { tag: [tags.keyword, tags.modifier, tags.operatorKeyword], fontWeight: '600' },
  { tag: [tags.string, tags.special(tags.string)], color: 'var(--string)' },
  { tag: [tags.comment], color: 'var(--quiet)', fontStyle: 'italic' },
  { tag: [tags.number, tags.bool], color: 'var(--number)' },
  { tag: [tags.typeName], color: 'var(--quiet)' },
]);

const look = EditorView.theme({
  '&': { fontSize: '0.875rem', backgroundColor: 'var(--paper)', color: 'var(--ink)', height: '100%' },
  '.cm-content': {
    fontFamily: 'ui-monospace, "DejaVu Sans Mono", Menlo, Consolas, monospace',
    caretColor: 'var(--ink)',
  },
  '.cm-cursor': { borderLeftColor: 'var(--ink)' },
  '.cm-scroller': { overflow: 'auto' },
  '.cm-gutters': {
    backgroundColor: 'var(--paper)',
    color: 'var(--quiet)',
    borderRight: '1px solid var(--hair)',
  },
  '.cm-activeLine, .cm-activeLineGutter': { backgroundColor: 'transparent' },
  '.cm-lit': { backgroundColor: 'var(--lit-ground)' },
  '&.cm-focused': { outline: '3px solid var(--focus)', outlineOffset: '-3px' },
  '.cm-selectionBackground, &.cm-focused > .cm-scroller > .cm-selectionLayer .cm-selectionBackground': {
    backgroundColor: 'var(--hair)',
  },
  '.cm-panels': { backgroundColor: 'var(--paper)', color: 'var(--ink)' },
  '.cm-tooltip': { backgroundColor: 'var(--paper)', color: 'var(--ink)', border: '1px solid var(--ink)' },
  // The marks of the library are pictures in the style sheet, which the page's security policy does not load.
  '.cm-lint-marker-error, .cm-lint-marker-warning, .cm-lint-marker-info': {
    content: '"▸"',
    color: 'var(--wrong)',
  },
  '.cm-lintRange-error, .cm-lintRange-warning, .cm-lintRange-info': {
    backgroundImage: 'none',
    textDecoration: 'underline wavy var(--wrong)',
  },
  '.cm-tooltip-autocomplete > ul > li': { fontFamily: 'inherit', padding: '0.2rem 0.5rem' },
  '.cm-tooltip-autocomplete > ul > li[aria-selected]': {
    backgroundColor: 'var(--ink)',
    color: 'var(--paper)',
  },
  '.cm-completionDetail': { color: 'inherit', opacity: '0.75', fontStyle: 'normal' },
  '.cm-completionMatchedText': { fontWeight: '600', textDecoration: 'none' },
  '.cm-meaning': { maxWidth: '28rem', padding: '0.4rem 0.6rem' },
  '.cm-meaning p': { margin: '0.3rem 0 0', fontFamily: 'var(--sans)' },
  '.cm-diagnosticAction': { backgroundColor: 'var(--ink)', color: 'var(--paper)' },
  '.cm-changedLine': { backgroundColor: 'var(--lit-ground) !important' },
  '.cm-changedText': { background: 'none !important', textDecoration: 'underline' },
  '.cm-deletedChunk': { backgroundColor: 'transparent', color: 'var(--quiet)' },
});

const lighten = StateEffect.define<{ readonly from: number; readonly to: number } | undefined>();

/** The lines that are lit: those of the step that is shown. */
const lit = StateField.define<DecorationSet>({
  create: () => Decoration.none,
  update: (before, { changes, effects, state }) => {
    let now = before.map(changes);
    for (const effect of effects) {
      if (!effect.is(lighten)) continue;
      const { from, to } = effect.value ?? { from: 1, to: 0 };
      const marks = [];
      for (let line = from; line <= Math.min(to, state.doc.lines); line++)
        marks.push(Decoration.line({ class: 'cm-lit' }).range(state.doc.line(line).from));
      now = Decoration.set(marks);
    }
    return now;
  },
  provide: (field) => EditorView.decorations.from(field),
});

/** Names are looked at once nobody has typed for so long, ms. */
const pause = 300;

/**
 * An editor in a shadow root, where its styles are no style element, which the page's security policy forbids. Tab is the
 * keyboard user's: it leaves.
 */
export function codeEditor(root: ShadowRoot, events: EditorEvents): CodeEditor {
  let silent = false;
  let issues: readonly CodeIssue[] = [];
  let slips: readonly NameSlip[] = [];
  let typed: readonly TypeProblem[] = [];
  let waiting: ReturnType<typeof setTimeout> | undefined;
  /** What names mean in what is written now. */
  const knownIn = ({ doc }: EditorState): KnownNames | undefined => {
    const known = events.known();
    if (!known || shown.file === '') return undefined;
    return { ...known, file: shown.file, files: { ...known.files, [shown.file]: doc.toString() } };
  };
  const mark = (): void =>
    view.dispatch(
      setDiagnostics(view.state, [
        ...issues.flatMap((issue) => diagnosticOf(issue, view.state)),
        ...slips.map((slip) => slipDiagnostic(slip)),
        ...typed.filter((problem) => !slips.some((slip) => overlap(slip, problem))).map(typeDiagnostic),
      ]),
    );
  const lookSoon = (): void => {
    clearTimeout(waiting);
    const mine = setTimeout(async () => {
      const known = knownIn(view.state);
      if (known) await readAhead(known, () => waiting === mine);
      if (waiting !== mine) return;
      slips = known ? slipsIn(known) : [];
      mark();
    }, pause);
    waiting = mine;
  };
  const extensions = (file: string, original: string | undefined): Extension => [
    lineNumbers(),
    history(),
    drawSelection(),
    highlightActiveLine(),
    bracketMatching(),
    indentOnInput(),
    highlightSelectionMatches(),
    search(),
    lintGutter(),
    lit,
    javascript({ typescript: true }),
    syntaxHighlighting(highlighting),
    look,
    EditorState.tabSize.of(2),
    EditorView.lineWrapping,
    EditorView.contentAttributes.of({
      tabindex: '0',
      'aria-label': `${file}: Tab leaves the editor, Ctrl+Enter runs the code`,
    }),
    nameAssist(knownIn, events),
    keymap.of([
      {
        key: 'Mod-Enter',
        run: () => {
          events.run();
          return true;
        },
      },
      ...lintKeymap,
      ...searchKeymap,
      ...historyKeymap,
      ...defaultKeymap,
    ]),
    EditorView.updateListener.of(({ docChanged, selectionSet, state }) => {
      if (docChanged) {
        // They lie elsewhere now.
        slips = [];
        typed = [];
        lookSoon();
      }
      if (silent) return;
      if (docChanged) events.write(state.doc.toString());
      if (!docChanged && !selectionSet) return;
      const { head } = state.selection.main;
      events.at(state.doc.lineAt(head).number);
      events.means(nameAt(state, head, knownIn(state))?.meaning);
      void events.typed(state.doc.toString(), head).then((found) => {
        const { doc, selection } = view.state;
        if (found && doc === state.doc && selection.main.head === head) events.means(found.meaning);
      });
    }),
    ...(original === undefined ? [] : [unifiedMergeView({ original, mergeControls: false, gutter: true })]),
  ];
  const view = new EditorView({ root, parent: root });
  let shown = { file: '', original: undefined as string | undefined };
  return {
    show: (file, text, original) => {
      if (shown.file === file && shown.original === original && view.state.doc.toString() === text) return;
      silent = true;
      if (shown.file === file && shown.original === original)
        view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: text } });
      else view.setState(EditorState.create({ doc: text, extensions: extensions(file, original) }));
      const [chunk] = original === undefined ? [] : (getChunks(view.state)?.chunks ?? []);
      if (chunk && (shown.file !== file || shown.original === undefined))
        view.dispatch({ effects: EditorView.scrollIntoView(chunk.fromB, { y: 'center' }) });
      silent = false;
      if (shown.file !== file) {
        slips = [];
        typed = [];
      }
      shown = { file, original };
      lookSoon();
    },
    tell: (told) => {
      const isNews = told.length > 0 || issues.length > 0;
      issues = told;
      if (isNews) mark();
    },
    type: (problems, of) => {
      const now = of === view.state.doc.toString() ? problems : [];
      const isNews = now.length > 0 || typed.length > 0;
      typed = now;
      if (isNews) mark();
    },
    look: lookSoon,
    light: (lines, reveal) => {
      if (!lines && view.state.field(lit, false)?.size === 0) return;
      const first = lines && lines.from <= view.state.doc.lines ? view.state.doc.line(lines.from) : undefined;
      view.dispatch({
        effects: [
          lighten.of(lines),
          ...(reveal && first ? [EditorView.scrollIntoView(first.from, { y: 'center' })] : []),
        ],
      });
    },
    lead: (line) => {
      const { from } = lineOf(line, view.state);
      view.focus();
      view.dispatch({
        selection: { anchor: from },
        effects: EditorView.scrollIntoView(from, { y: 'center' }),
      });
    },
    end: () => {
      clearTimeout(waiting);
      waiting = undefined;
      view.destroy();
    },
  };
}

/** The line of this number, from 1; the nearest that there is. */
const lineOf = (line: number, { doc }: EditorState) => doc.line(Math.min(Math.max(1, line), doc.lines));

function diagnosticOf({ source, severity, message }: CodeIssue, state: EditorState): readonly Diagnostic[] {
  if (!source) return [];
  const { from, to } = lineOf(source.line, state);
  return [{ from, to, severity: severity === 'note' ? 'info' : severity, message }];
}

const overlap = (a: Stretch, b: Stretch): boolean => a.from < b.to && b.from < a.to;

const typeDiagnostic = ({ from, to, message }: TypeProblem): Diagnostic => ({
  from,
  to,
  severity: 'warning',
  message,
});

/** What may be meant instead is written by one press. */
function slipDiagnostic({ from, to, message, instead }: NameSlip): Diagnostic {
  const actions =
    instead === undefined
      ? []
      : [
          {
            name: `Write “${instead}”`,
            apply: (view: EditorView, at: number, end: number) =>
              view.dispatch({ changes: { from: at, to: end, insert: instead } }),
          },
        ];
  return { from, to, severity: 'warning', message, actions };
}
