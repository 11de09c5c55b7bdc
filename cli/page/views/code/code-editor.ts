import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { javascript } from '@codemirror/lang-javascript';
import { bracketMatching, indentOnInput } from '@codemirror/language';
import { lintGutter, lintKeymap, setDiagnostics } from '@codemirror/lint';
import { getChunks, unifiedMergeView } from '@codemirror/merge';
import { highlightSelectionMatches, search, searchKeymap } from '@codemirror/search';
import { EditorState, type Extension } from '@codemirror/state';
import { drawSelection, EditorView, highlightActiveLine, keymap, lineNumbers } from '@codemirror/view';
import { codeLook } from './code-look.ts';
import { issueMark, lineOf, overlap, slipMark, typeMark } from './code-marks.ts';
import type { EditorEvents } from './editor-events.ts';
import { lighten, litLines } from './lit-lines.ts';
import { nameAssist } from './names/assist.ts';
import { atLeisure } from './names/at-leisure.ts';
import type { KnownNames } from './names/known-names.ts';
import { nameAt } from './names/name-at.ts';
import { readAhead } from './names/read-ahead.ts';
import { type NameSlip, slipsIn } from './names/slips.ts';
import type { CodeIssue } from './questions.ts';
import type { TypeProblem } from './types/messages.ts';

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
        ...issues.flatMap((issue) => issueMark(issue, view.state)),
        ...slips.map(slipMark),
        ...typed.filter((problem) => !slips.some((slip) => overlap(slip, problem))).map(typeMark),
      ]),
    );
  const lookSoon = (): void => {
    clearTimeout(waiting);
    const mine = setTimeout(async () => {
      const known = knownIn(view.state);
      const wanted = (): boolean => waiting === mine;
      if (known) await readAhead(known, wanted);
      if (!wanted()) return;
      const found = await atLeisure(known ? slipsIn(known) : [], wanted);
      if (!found || !wanted()) return;
      slips = found;
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
    litLines,
    javascript({ typescript: true }),
    codeLook,
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
      if (!lines && view.state.field(litLines, false)?.size === 0) return;
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
