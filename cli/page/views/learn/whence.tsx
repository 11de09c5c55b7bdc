import { capital, listed } from '../../../../drafts/index.ts';
import type { TaughtDimension } from './dimension.ts';
import type { TaughtGround, TaughtStep } from './lesson.ts';
import type { SeenNumber } from './number-seen.ts';
import { type PointedNumber, restingOn, type ShownLesson } from './own.ts';
import { Rule } from './rule.tsx';
import type { Teach } from './teach.ts';

interface WhenceProps {
  readonly shown: ShownLesson;
  readonly step: TaughtStep;
  readonly pointed: PointedNumber | undefined;
  /** How it is seen on the drawing. */
  readonly seen: SeenNumber | undefined;
  readonly teach: Teach;
  /** Takes what was turned into the draft's code, where that can be done. */
  readonly takeOver?: (() => void) | undefined;
}

/** Where the number came from that is pointed at, and what can be done about it. */
export function Whence({ shown, step, pointed, seen, teach, takeOver }: WhenceProps) {
  const ground = typeof pointed === 'number' ? step.grounds[pointed] : undefined;
  return (
    <section id="whence" class="whence" aria-label="Where it comes from" aria-live="polite">
      {pointed === undefined && <p class="quiet">Press a number to see where it comes from.</p>}
      {pointed === 'outcome' && (
        <>
          <h3>
            {step.title}, {step.amount}
          </h3>
          <p>Found in this step.</p>
          <Resting shown={shown} step={step} teach={teach} />
        </>
      )}
      {ground && <Ground ground={ground} shown={shown} teach={teach} takeOver={takeOver} />}
      {seen && <p class="quiet">{sight(seen)}</p>}
    </section>
  );
}

/** What it measures on the drawing, or why nothing. */
function sight(seen: SeenNumber): string {
  switch (seen.as) {
    case 'length':
      return `On the drawing it is ${marked(seen.dimension)}.`;
    case 'found from it':
      return seen.atLast
        ? `It is no length of the drawing itself: others are reckoned with it. The first that lies there is marked: ${seen.by.title}.`
        : `It is no length of the drawing itself; what was found from it is marked there: ${seen.by.title}.`;
    case 'nothing':
      return 'It comes to nothing here, or to so little that it is not marked on the drawing.';
    case 'angle':
      return 'It is an angle that lies nowhere on the drawing, and nothing that does rests on it.';
    case 'plain number':
      return 'It is a plain number, and nothing that lies on the drawing rests on it.';
    case 'no line':
      return 'It lies nowhere on the drawing, and nothing that does rests on it.';
  }
}

/** What of a number is marked on the drawing that is shown. */
function marked(dimension: TaughtDimension): string {
  if (dimension.kind === 'angle') return 'the angle that is marked';
  if (dimension.kind !== 'parts') return 'the length that is marked';
  const { on, times, parts } = dimension;
  const elsewhere = listed(parts.filter((part) => part.on !== on).map((part) => part.on));
  const long = times === 1 ? 'as long as all' : `${times === 2 ? 'twice' : `${times} times`} as long as all`;
  return elsewhere === '' ? `${long} that is marked` : `${long} that is marked, here and on the ${elsewhere}`;
}

/** What kind of number it is, in the words of the lesson. */
const kinds = {
  measurement: 'a measurement',
  choice: 'a choice',
  rule: 'a rule of the trade',
  fitting: 'found at the fitting',
  step: 'found before',
} as const;

function Ground({
  ground,
  shown,
  teach,
  takeOver,
}: Pick<WhenceProps, 'shown' | 'teach' | 'takeOver'> & { ground: TaughtGround }) {
  const { from, name, amount, says, step, rule } = ground;
  if (rule)
    return <Rule key={rule.id} rule={rule} says={says} shown={shown} teach={teach} takeOver={takeOver} />;
  return (
    <>
      <h3>
        {capital(name)}
        {amount && `, ${amount}`}
      </h3>
      <p>
        {capital(kinds[from])}
        {from === 'step' || from === 'fitting' ? '' : `: ${says}`}
        {/[.?]$/.test(says) && from !== 'step' ? '' : '.'}
      </p>
      {step !== undefined && (
        <p>
          <button type="button" onClick={() => teach({ does: 'go to step', step })}>
            To step {step}
          </button>
        </p>
      )}
    </>
  );
}

/** The steps that are found from this one straight away. */
function Resting({ shown: { lesson }, step, teach }: Pick<WhenceProps, 'shown' | 'step' | 'teach'>) {
  const straight = lesson.steps.filter(({ grounds }) =>
    grounds.some((ground) => ground.step === step.number),
  );
  const all = restingOn(step.number, lesson).size - 1;
  if (all === 0) return <p class="quiet">No other step rests on it.</p>;
  return (
    <>
      <p class="quiet">
        {all === 1 ? 'One step rests' : `${all} steps rest`} on it; what they draw is lit. Straight on it:
      </p>
      <ul class="resting">
        {straight.map(({ number, title }) => (
          <li key={number}>
            <button type="button" onClick={() => teach({ does: 'go to step', step: number })}>
              {number}. {title}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
