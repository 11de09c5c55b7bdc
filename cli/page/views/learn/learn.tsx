import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { bodyData } from '../../body-form.ts';
import { choicesOf, isUntouched } from '../../state.ts';
import { AllSaid } from '../said.tsx';
import type { FileViewProps } from '../view.ts';
import { Construction, drawingNames, drawingOf } from './construction.tsx';
import { Contents } from './contents.tsx';
import { type Dimension, dimensionBy, dimensionOf } from './dimension.ts';
import { DrawingNames } from './drawing-names.tsx';
import type { Lesson, TaughtGround, TaughtStep } from './lesson.ts';
import { litSteps } from './lit-steps.ts';
import { movedBetween, type PointedNumber, type ShownLesson } from './own.ts';
import { PrintedLesson } from './printed-lesson.tsx';
import { Sentence } from './sentence.tsx';
import type { Teach } from './teach.ts';
import { Whence } from './whence.tsx';

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
    send({ does: 'within', view: 'code', what: { does: 'take over rules', garment: state.garment, turned } });
    location.hash = 'code';
  };
  return (
    <>
      <h1 tabIndex={-1}>Learn</h1>
      {errors.length > 0 && (
        <div class="hinders">
          {lesson && <p>This is the last that could be drawn. What stands in the way of the next:</p>}
          <AllSaid issues={errors.slice(0, most)} />
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

interface TaughtProps {
  readonly shown: ShownLesson;
  readonly step: TaughtStep;
  readonly pointed: PointedNumber | undefined;
  /** The drawing that she chose to see. */
  readonly chosen: string | undefined;
  readonly teach: Teach;
  readonly takeOver: () => void;
}

function Taught({ shown, step, pointed, chosen, teach, takeOver }: TaughtProps) {
  const { lesson, plain, turned, moved } = shown;
  const ground = typeof pointed === 'number' ? step.grounds[pointed] : undefined;
  const seen = useMemo(() => numberSeen(lesson, step, pointed), [lesson, step, pointed]);
  const dimension = seen?.dimension;
  // Many lines, which stay the same while a number is pointed at.
  const contents = useMemo(
    () => <Contents lesson={lesson} at={step.number} moved={moved.steps} teach={teach} />,
    [lesson, step.number, moved],
  );
  const turnedIds = Object.keys(turned);
  const isTurned = ground?.rule !== undefined && ground.rule.id in turned;
  // Where a rule is turned all that moves is to be seen, be it drawn later.
  const on =
    chosen ??
    (isTurned ? [...moved.drawings][0] : undefined) ??
    dimension?.on ??
    drawingOf(lesson, step.number);
  const go = (number: number): void => teach({ does: 'go to step', step: number });
  return (
    <div class="lesson">
      <section
        class="step"
        aria-label="The step: arrow keys go to the next and the one before"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: keys step the lesson wherever one is in it.
        tabIndex={0}
        onKeyDown={(event) => {
          const to =
            event.ctrlKey || event.metaKey || event.altKey ? undefined : keyed(event.key, step, lesson);
          if (to === undefined || event.target instanceof HTMLInputElement) return;
          event.preventDefault();
          go(to);
        }}
      >
        <p class="quiet">
          {step.heading} · step {step.number} of {lesson.steps.length}
        </p>
        <div aria-live="polite">
          <h2>{step.title}</h2>
          <Sentence step={step} pointed={pointed} point={(at) => teach({ does: 'point at', pointed: at })} />
        </div>
        {step.places.map((place) => (
          <p key={place} class="quiet">
            {place}
          </p>
        ))}
        <p class="quiet">On the word of: {step.source}</p>
        <p class="row">
          <button type="button" onClick={() => go(step.number - 1)} disabled={step.number === 1}>
            ← Before
          </button>
          <button
            type="button"
            onClick={() => go(step.number + 1)}
            disabled={step.number === lesson.steps.length}
          >
            Next →
          </button>
          <button type="button" onClick={() => print()}>
            Print the lesson
          </button>
        </p>
        <Whence
          shown={shown}
          step={step}
          pointed={pointed}
          seen={seen?.by ? 'by' : dimension?.half ? 'half' : dimension ? 'whole' : 'nowhere'}
          teach={teach}
          takeOver={takeOver}
        />
        {turnedIds.length > 0 && (
          <p class="turned">
            {turnedIds.length === 1 ? `Rule ${turnedIds[0]} is` : `Rules ${turnedIds.join(', ')} are`} turned,
            here alone: what you take away is drawn as the draft has it.{' '}
            <button type="button" onClick={() => teach({ does: 'turn no rule' })}>
              All as in the draft
            </button>
          </p>
        )}
      </section>
      <div class="sheet">
        {on === undefined ? (
          <p class="empty">This draft draws nothing step by step. Its pieces are under Pieces.</p>
        ) : (
          <>
            <Construction
              lesson={lesson}
              under={lesson === plain ? undefined : plain}
              on={on}
              step={isTurned ? lesson.steps.length : step.number}
              lit={litSteps(shown, step, pointed, dimension !== undefined)}
              dimension={dimension}
              amount={seen?.amount}
              goTo={go}
            />
            <DrawingNames
              names={drawingNames(lesson)}
              on={on}
              moved={moved.drawings}
              choose={(name) => teach({ does: 'show drawing', on: name })}
            />
          </>
        )}
      </div>
      {contents}
    </div>
  );
}

interface SeenNumber {
  readonly dimension: Dimension;
  readonly amount: string | undefined;
  /** The step that is seen instead, which was found from it. */
  readonly by?: TaughtStep;
}

/** Where the number that is pointed at is to be seen: as a length, or in the length of what rests on it. */
function numberSeen(
  lesson: Lesson,
  step: TaughtStep,
  pointed: PointedNumber | undefined,
): SeenNumber | undefined {
  const ground = typeof pointed === 'number' ? step.grounds[pointed] : undefined;
  if (pointed === undefined || (pointed !== 'outcome' && !ground)) return undefined;
  const { mm, amount } = ground ?? step;
  const dimension = mm === undefined ? undefined : dimensionOf(mm, step, lesson);
  if (dimension) return { dimension, amount };
  const found = dimensionBy(stepsFrom(lesson, step, ground), lesson);
  return found && { ...found, amount: `${found.by.title} ${found.by.amount ?? ''}` };
}

/** The steps that a number goes into: for a number that a step came to, that step. */
function stepsFrom(
  { steps }: Lesson,
  step: TaughtStep,
  ground: TaughtGround | undefined,
): readonly TaughtStep[] {
  if (!ground) return [step];
  if (ground.step !== undefined) return steps.filter(({ number }) => number === ground.step);
  return steps.filter(({ grounds }) =>
    grounds.some(({ name, from }) => name === ground.name && from === ground.from),
  );
}

function keyed(key: string, { number }: TaughtStep, { steps }: Lesson): number | undefined {
  const to = { ArrowRight: number + 1, ArrowLeft: number - 1, Home: 1, End: steps.length }[key];
  return to === undefined ? undefined : Math.min(Math.max(1, to), steps.length);
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
    const { garment, form } = state;
    ask({ kind: 'lesson', key, body: bodyData(form), garment, choices: choicesOf(state), turned });
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
