import { useEffect, useRef, useState } from 'preact/hooks';
import { type CodeEditor, codeEditor } from './code-editor.ts';
import type { EditorEvents } from './editor-events.ts';
import type { KnownNames } from './names/known-names.ts';
import type { NameMeaning } from './names/name-meaning.ts';
import type { Coded } from './own.ts';
import type { CodeIssue } from './questions.ts';
import type { Typing } from './types/types.ts';

interface EditorProps extends Omit<EditorEvents, 'known' | 'means'> {
  readonly typing: Typing | undefined;
  /** What names may mean, once that is known. */
  readonly known: KnownNames | undefined;
  readonly file: string;
  readonly text: string;
  /** What it differs from, where that is to be seen. */
  readonly original: string | undefined;
  readonly issues: readonly CodeIssue[];
  /** The line that somebody was led to last. */
  readonly sought: Coded['sought'];
  readonly lit: { readonly from: number; readonly to: number } | undefined;
}

/** Whoever typed or moved the cursor so lately chose the step by it (ms). */
const justNow = 500;

/** The file that is edited. */
export function Editor(props: EditorProps) {
  const place = useRef<HTMLDivElement>(null);
  const [editor, setEditor] = useState<CodeEditor>();
  const [meaning, mean] = useState<NameMeaning>();
  const events = useRef(props);
  events.current = props;
  const typed = useRef(0);
  useEffect(() => {
    const host = place.current;
    if (!host) return;
    const root = host.shadowRoot ?? host.attachShadow({ mode: 'open' });
    let made: CodeEditor | undefined;
    // It takes about as long as all the rest of the view, which is shown first.
    const waiting = setTimeout(() => {
      made = codeEditor(root, {
        write: (text) => {
          typed.current = Date.now();
          events.current.write(text);
        },
        at: (line) => {
          typed.current = Date.now();
          events.current.at(line);
        },
        run: () => events.current.run(),
        known: () => events.current.known,
        means: mean,
        typed: (text, at) => events.current.typed(text, at),
        parted: (text, at) => events.current.parted(text, at),
      });
      setEditor(made);
    }, 0);
    return () => {
      clearTimeout(waiting);
      made?.end();
    };
  }, []);
  const { file, text, original, issues, lit, known, typing, sought } = props;
  useEffect(() => editor?.show(file, text, original), [editor, file, text, original]);
  useEffect(() => editor?.tell(issues), [editor, file, original, issues]);
  useEffect(() => editor?.look(), [editor, known?.program, known?.choices]);
  useEffect(
    () => editor?.type(typing?.problems.filter((problem) => problem.file === file) ?? [], typing?.of[file]),
    [editor, file, original, typing],
  );
  useEffect(() => mean(undefined), [file]);
  useEffect(() => {
    // Where the cursor itself chose the step, it is in sight already.
    editor?.light(lit, Date.now() - typed.current > justNow);
  }, [editor, file, original, lit?.from, lit?.to]);
  // Who comes back to the view is not led again.
  const led = useRef(sought);
  useEffect(() => {
    if (!editor || !sought || led.current === sought) return;
    led.current = sought;
    editor.lead(sought.line);
  }, [editor, sought]);
  return (
    <>
      <div class="editor" ref={place} />
      <p class="meaning quiet">
        {meaning ? (
          <>
            <code>{meaning.signature}</code> {meaning.says}
          </>
        ) : (
          'What the name means that the cursor is in, stands here; Ctrl+Space says what could be written.'
        )}
      </p>
    </>
  );
}
