import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { askedDraft, isUntouched } from '../../state.ts';
import { AllSaid } from '../said.tsx';
import type { FileViewProps } from '../view.ts';
import { movedBetween } from './own.ts';
import { PrintedLesson } from './printed-lesson.tsx';
import { Taught } from './taught.tsx';
import type { Teach } from './teach.ts';

/** So many things that stand in the way are told. */
const most = 5;

/** How the garment is drawn for this body, step by step. */
export function Learn(props: FileViewProps) {
  const { state, send } = props;
  const { learn } = state.own;
  const { turned } = learn;
  const teach: Teach = (what) => send({ does: 'within', view: 'learn', what });
  useTurned(props);
  const printing = usePrinting();
  const plain = state.made?.parts.lesson;
  const isTurned = Object.keys(turned).length > 0;
  const lesson = (isTurned ? learn.lesson : undefined) ?? plain;
  const issues = [
    ...(state.answer?.made ? [] : (state.answer?.issues ?? [])),
    ...(isTurned ? learn.issues : []),
  ];
  const moved = useMemo(() => plain && lesson && movedBetween(plain, lesson), [plain, lesson]);
  const errors = issues.filter(({ severity }) => severity === 'error');
  const step = lesson?.steps[Math.min(learn.step, lesson.steps.length) - 1];
  const takeOver = (): void => {
    const { byCode, garment, own } = state;
    const of = (byCode ? own.code.of : undefined) ?? ({ kind: 'garment', name: garment } as const);
    send({ does: 'within', view: 'code', what: { does: 'take over rules', of, turned } });
    location.hash = 'code';
  };
  return (
    <>
      <h1 tabIndex={-1}>Learn</h1>
      {errors.length > 0 && (
        <div class="hinders">
          {lesson && <p>This is the last that could be drawn. What stands in the way of the next:</p>}
          <AllSaid issues={errors.slice(0, most)} hers={{ state, send }} />
        </div>
      )}
      {!lesson && errors.length === 0 && (
        <p>{isUntouched(state) ? 'Nothing is measured yet.' : 'Drafting …'}</p>
      )}
      {lesson && plain && moved && step && (
        <>
          <Taught
            shown={{ lesson, plain, turned, moved }}
            step={step}
            pointed={learn.pointed}
            chosen={learn.on}
            teach={teach}
            takeOver={takeOver}
          />
          {printing && <PrintedLesson lesson={lesson} />}
        </>
      )}
    </>
  );
}

/** Asks for the lesson with the rules as they are turned: one at a time, the newest next. */
function useTurned({ state, ask }: FileViewProps): void {
  const { turned, answered } = state.own.learn;
  const waiting = useRef('');
  const key = Object.keys(turned).length > 0 ? `${state.asked} ${JSON.stringify(turned)}` : '';
  useEffect(() => {
    if (waiting.current === answered) waiting.current = '';
    if (key === '' || key === answered || waiting.current !== '') return;
    waiting.current = key;
    ask({ kind: 'lesson', key, ...askedDraft(state), turned });
  }, [key, answered]);
}

/** Whether the browser is about to print: then all steps are wanted on paper. */
function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const begin = (): void => setPrinting(true);
    const end = (): void => setPrinting(false);
    addEventListener('beforeprint', begin);
    addEventListener('afterprint', end);
    return () => {
      removeEventListener('beforeprint', begin);
      removeEventListener('afterprint', end);
    };
  }, []);
  return printing;
}
