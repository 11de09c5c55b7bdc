import { useLayoutEffect, useMemo } from 'preact/hooks';
import { Construction } from './construction.tsx';
import { Contents } from './contents.tsx';
import { DrawingNames } from './drawing-names.tsx';
import type { Lesson, TaughtStep } from './lesson.ts';
import { drawingNames, drawingOf } from './lesson-drawings.ts';
import { litSteps } from './lit-steps.ts';
import { numberSeen, type SeenNumber } from './number-seen.ts';
import type { PointedNumber, ShownLesson } from './own.ts';
import { restsOn } from './rests-on.ts';
import { Sentence } from './sentence.tsx';
import type { Teach } from './teach.ts';
import { Whence } from './whence.tsx';

interface TaughtProps {
  readonly shown: ShownLesson;
  readonly step: TaughtStep;
  readonly pointed: PointedNumber | undefined;
  /** The drawing that she chose to see. */
  readonly chosen: string | undefined;
  readonly teach: Teach;
  readonly takeOver: () => void;
}

/** A step with its sentence, what is pointed at in it, the drawing it stands on, and all steps beside. */
export function Taught({ shown, step, pointed, chosen, teach, takeOver }: TaughtProps) {
  const { lesson, plain, turned, moved } = shown;
  const ground = typeof pointed === 'number' ? step.grounds[pointed] : undefined;
  const seen = useMemo(() => numberSeen(lesson, step, pointed, chosen), [lesson, step, pointed, chosen]);
  const dimension = seen && 'dimension' in seen ? seen.dimension : undefined;
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
  // At once: a key may follow on what it drew.
  useLayoutEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const to = keyed(event, step, lesson);
      if (to === undefined) return;
      event.preventDefault();
      go(to);
    };
    addEventListener('keydown', press);
    return () => removeEventListener('keydown', press);
  }, [lesson, step, teach]);
  return (
    <div class="lesson">
      <section
        class="step"
        aria-label="The step: arrow keys go to the next and the one before"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: Home and End step the lesson in it, and move the page elsewhere.
        tabIndex={0}
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
        <p class="quiet">{restsOn(step.source)}</p>
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
        <Whence shown={shown} step={step} pointed={pointed} seen={seen} teach={teach} takeOver={takeOver} />
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
              amount={seen && markedWith(seen)}
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

/** What stands at the length that is marked for a number. */
const markedWith = (seen: SeenNumber): string | undefined =>
  seen.as === 'length'
    ? seen.amount
    : seen.as === 'found from it'
      ? `${seen.by.title} ${seen.by.amount ?? ''}`
      : undefined;

/**
 * The step that a key leads to: the arrows wherever one is but in a field, for a lesson is stepped as it is opened; Home and End in the
 * step alone.
 */
function keyed(event: KeyboardEvent, { number }: TaughtStep, { steps }: Lesson): number | undefined {
  const { key, target } = event;
  if (event.ctrlKey || event.metaKey || event.altKey || event.shiftKey || event.defaultPrevented)
    return undefined;
  const at = target instanceof Element ? target : document.body;
  if (at.closest('input, select, textarea, [contenteditable]')) return undefined;
  const last = steps.length;
  const to = {
    ArrowRight: number + 1,
    ArrowLeft: number - 1,
    ...(at.closest('.step') ? { Home: 1, End: last } : {}),
  }[key];
  return to === undefined ? undefined : Math.min(Math.max(1, to), last);
}
