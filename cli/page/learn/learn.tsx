import { useEffect, useState } from 'preact/hooks';
import { AllSaid } from '../views/said.tsx';
import type { ViewProps } from '../views/view.ts';
import { Construction, drawingOf } from './construction.tsx';
import { Contents } from './contents.tsx';
import { dimensionOf } from './dimension.ts';
import { type LearnState, movedSteps, restingOn, stepShown } from './learn-state.ts';
import type { Lesson, TaughtStep } from './lesson.ts';
import { PrintedLesson } from './printed-lesson.tsx';
import { Sentence } from './sentence.tsx';
import type { Teach } from './teach.ts';
import { Whence } from './whence.tsx';

/** How the garment is drawn for this body, step by step. */
export function Learn({ state, send }: ViewProps) {
  const { learn } = state;
  const teach: Teach = (act) => send({ does: 'learn', act });
  const step = stepShown(learn);
  const printing = usePrinting();
  const errors = learn.issues.filter(({ severity }) => severity === 'error');
  return (
    <>
      <h1 tabIndex={-1}>Learn</h1>
      {errors.length > 0 && (
        <div class="hinders">
          {learn.lesson && <p>This is the last that could be drawn. What stands in the way of the next:</p>}
          <AllSaid issues={errors.slice(0, most)} />
        </div>
      )}
      {!learn.lesson && errors.length === 0 && <p>Drafting …</p>}
      {learn.lesson && step && (
        <>
          <Taught learn={learn} lesson={learn.lesson} step={step} teach={teach} send={send} />
          {printing && <PrintedLesson lesson={learn.lesson} />}
        </>
      )}
    </>
  );
}

/** So many things that stand in the way are told. */
const most = 5;

interface TaughtProps {
  readonly learn: LearnState;
  readonly lesson: Lesson;
  readonly step: TaughtStep;
  readonly teach: Teach;
  readonly send: ViewProps['send'];
}

function Taught({ learn, lesson, step, teach, send }: TaughtProps) {
  const { pointed, turned } = learn;
  const moved = movedSteps(learn);
  const ground = typeof pointed === 'number' ? step.grounds[pointed] : undefined;
  const mm = pointed === 'outcome' ? step.mm : ground?.mm;
  const dimension = mm === undefined ? undefined : dimensionOf(mm, step, lesson);
  const on = dimension?.on ?? drawingOf(lesson, step.number);
  const last = lesson.steps.length;
  const turnedIds = Object.keys(turned);
  const keys: Readonly<Record<string, number>> = {
    ArrowRight: step.number + 1,
    ArrowLeft: step.number - 1,
    Home: 1,
    End: last,
  };
  const go = (number: number): void => teach({ does: 'go to step', step: number });
  return (
    <div class="lesson">
      <section
        class="step"
        aria-label="The step: arrow keys go to the next and the one before"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: keys step the lesson wherever one is in it.
        tabIndex={0}
        onKeyDown={(event) => {
          const to = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key];
          if (to === undefined || event.target instanceof HTMLInputElement) return;
          event.preventDefault();
          go(to);
        }}
      >
        <p class="quiet">
          {step.heading} · step {step.number} of {last}
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
          <button type="button" onClick={() => go(step.number + 1)} disabled={step.number === last}>
            Next →
          </button>
          <button type="button" onClick={() => print()}>
            Print the lesson
          </button>
        </p>
        <Whence
          learn={learn}
          step={step}
          teach={teach}
          takeOver={() => send({ does: 'code', act: { does: 'take over rules', turned } })}
        />
        {turnedIds.length > 0 && (
          <p class="turned" role="status">
            {turnedIds.length === 1
              ? `Rule ${turnedIds[0]} is turned.`
              : `Rules ${turnedIds.join(', ')} are turned.`}{' '}
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
          <Construction
            lesson={lesson}
            under={turnedIds.length > 0 ? learn.plain : undefined}
            on={on}
            step={step.number}
            lit={litSteps(learn, lesson, step, dimension !== undefined)}
            dimension={dimension}
            amount={pointed === 'outcome' ? step.amount : ground?.amount}
            goTo={go}
          />
        )}
        {on !== undefined && <p class="quiet">{on}</p>}
      </div>
      <Contents learn={learn} moved={moved} teach={teach} />
    </div>
  );
}

/** The steps whose lines are lit for a number: what rests on it, and where it cannot be shown as a length, what drew it. */
function litSteps(
  { pointed, turned, plain, ...rest }: LearnState,
  lesson: Lesson,
  step: TaughtStep,
  measured: boolean,
): ReadonlySet<number> {
  if (pointed === undefined) return new Set();
  if (pointed === 'outcome') return restingOn(step.number, lesson);
  const ground = step.grounds[pointed];
  if (!ground) return new Set();
  if (ground.rule && ground.rule.id in turned)
    return new Set(
      movedSteps({ pointed, turned, plain, ...rest }).map(({ step: { number } }) => number),
    );
  if (ground.step !== undefined) return new Set([ground.step]);
  if (measured) return new Set();
  const from = lesson.steps.filter(({ grounds }) =>
    grounds.some(({ name, from }) => name === ground.name && from === ground.from),
  );
  return new Set(from.flatMap(({ number }) => [...restingOn(number, lesson)]));
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
