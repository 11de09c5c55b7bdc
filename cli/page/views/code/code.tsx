import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { DraftFiles } from '../../../own-draft/draft-files.ts';
import { isUntouched } from '../../state.ts';
import type { FileViewProps } from '../view.ts';
import type { Coding } from './coding.ts';
import { DrawViews } from './draw-views.tsx';
import { Drawn } from './drawn.tsx';
import { Editor } from './editor.tsx';
import { Hold } from './hold.tsx';
import type { KnownNames } from './names/known-names.ts';
import type { ProgramNames } from './names/program-names.ts';
import { codeIssues } from './own.ts';
import { Problems } from './problems.tsx';
import type { CodeIssue } from './questions.ts';
import { withRulesWritten } from './rule-in-code.ts';
import { Runs } from './runs.ts';
import { beginning, programNames } from './sources.ts';
import { placeOfStep, stepAt, stepPlaces } from './step-places.ts';
import { Tools } from './tools.tsx';
import { TypeCheck } from './types/type-check.tsx';
import { useTypes } from './types/use-types.ts';
import { filesNow } from './written-code.ts';

/** The draft's own files beside what they draw. */
export function Code(props: FileViewProps) {
  const { state, send } = props;
  const { code } = state.own;
  const { original, changed, file, strange, shows, of } = code;
  const tell = (what: Coding): void => send({ does: 'within', view: 'code', what });
  const failed = useSources(props, tell);
  const runs = useRuns(props);
  const files = useMemo(() => filesNow({ original, changed }), [original, changed]);
  const places = useMemo(() => stepPlaces(files), [files]);
  const known = useKnown(props, file, files);
  const { types, typing } = useTypes(code.typed, files, file);
  const issues = useMemo(() => codeIssues(code), [code.linked, code.ran, code.problem]);
  const lesson = code.drawn?.lesson;
  const place = lesson && code.step !== undefined ? placeOfStep(places, code.step, lesson) : undefined;
  const goTo = ({ source }: CodeIssue): void => {
    if (source && source.file in files) tell({ does: 'lead to', file: source.file, line: source.line });
  };
  const goToStep = (step: number): void => {
    const found = lesson && placeOfStep(places, step, lesson);
    if (found && found.file !== file) tell({ does: 'show file', file: found.file });
    tell({ does: 'go to step', step });
  };
  // Always the same, so that what is drawn need not be drawn again for it.
  const goingToStep = useRef(goToStep);
  goingToStep.current = goToStep;
  const leadToStep = useCallback((step: number) => goingToStep.current(step), []);
  return (
    <>
      <h1 tabIndex={-1}>Change the code</h1>
      {failed && <p class="said error">The source of the drafts could not be loaded. Load the page again.</p>}
      <Tools code={code} garments={state.garments} tell={tell} run={() => runs.now()} />
      <DrawViews state={state} send={send} />
      {strange && (
        <div class="notice strange" role="alert">
          <p>
            {of?.name} came in a file: it may be a stranger’s. What it says is done in this browser, though
            apart: it reaches no network, nothing that this page keeps, and it is ended when it runs too long.
            Nothing of it has been run yet; it can be read below.
          </p>
          <button type="button" onClick={() => tell({ does: 'allow' })}>
            Run it
          </button>
        </div>
      )}
      {file !== '' && (
        <div class="code-bench">
          <section aria-label="The code" class="written">
            <Editor
              file={file}
              text={files[file] ?? ''}
              known={known}
              original={shows === 'difference' ? (original[file] ?? '') : undefined}
              issues={issues.filter(({ source }) => source?.file === file)}
              sought={code.sought}
              lit={place?.file === file ? place : undefined}
              typing={typing}
              typed={async (text, at) => types?.meaning({ ...files, [file]: text }, file, at)}
              parted={async (text, at) => (await types?.parts({ ...files, [file]: text }, file, at)) ?? []}
              write={(text) => tell({ does: 'write', file, text })}
              at={(line) => {
                if (lesson) tell({ does: 'go to step', step: stepAt(places, file, line, lesson) });
              }}
              run={() => runs.now()}
            />
            <TypeCheck
              wanted={code.typed}
              want={(typed) => tell({ does: 'check types', typed })}
              typing={typing}
              goTo={goTo}
            />
          </section>
          <section aria-label="What it draws" class="drawn">
            {isUntouched(state) && (
              <p class="quiet">Nothing is measured yet: this is drawn for an invented body.</p>
            )}
            <Problems issues={issues} isLast={code.drawn !== undefined} goTo={goTo} />
            <Drawn ran={code.drawn} step={code.step} goTo={leadToStep} strange={strange} />
          </section>
        </div>
      )}
      <Hold
        held={code.held}
        units={state.form.units || 'mm'}
        ready={code.linked?.script !== undefined && !strange}
        hold={(ends) => runs.hold(ends)}
        stop={() => tell({ does: 'let go' })}
        goTo={goTo}
      />
    </>
  );
}

/** Loads the source of the garment whose code is to be shown, and writes into it the rules that were turned; whether that failed. */
function useSources({ state }: FileViewProps, tell: (what: Coding) => void): boolean {
  const [failed, fail] = useState(false);
  const { of, original, changed, turned } = state.own.code;
  const name = of?.kind === 'garment' && Object.keys(changed).length > 0 ? of.name : state.garment;
  const isThere = Object.keys(original).length > 0;
  useEffect(() => {
    if (of?.kind === 'own' || (isThere && of?.name === name)) return;
    beginning(name).then(tell, () => fail(true));
  }, [of, name, isThere]);
  useEffect(() => {
    if (!turned || !isThere) return;
    const what = {
      does: 'rules are taken over',
      ...withRulesWritten(filesNow({ original, changed }), turned),
    } as const;
    // An effect that changes the state at once would be run again by the drawing that follows from it.
    queueMicrotask(() => tell(what));
  }, [turned, isThere]);
  return failed;
}

/** What names may mean in a file, once what the program calls its own is loaded. */
function useKnown({ state }: FileViewProps, file: string, files: DraftFiles): KnownNames | undefined {
  const [program, setProgram] = useState<ProgramNames>();
  const { garments } = state;
  const choices = useMemo(() => garments.flatMap((garment) => garment.choices), [garments]);
  useEffect(() => {
    // Without it the editor edits all the same.
    programNames().then(setProgram, () => {});
  }, []);
  return useMemo(() => program && { file, files, program, choices }, [file, files, program, choices]);
}

function useRuns(props: FileViewProps): Runs {
  const runs = useRef<Runs>(null);
  runs.current ??= new Runs(props);
  const { current } = runs;
  useEffect(() => current.update(props));
  useEffect(() => () => current.end(), []);
  return current;
}
