import { capital } from '../../../../drafts/index.ts';
import type { TaughtGround, TaughtStep } from './lesson.ts';
import { type PointedNumber, restingOn, type ShownLesson } from './own.ts';
import { Rule } from './rule.tsx';
import type { Teach } from './teach.ts';

interface WhenceProps {
  readonly shown: ShownLesson;
  readonly step: TaughtStep;
  readonly pointed: PointedNumber | undefined;
  /** How it is seen on the drawing: as a length, as half of one, by what was found from it, or not at all. */
  readonly seen: 'whole' | 'half' | 'by' | 'nowhere';
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
      {pointed !== undefined && <p class="quiet">{sights[seen]}</p>}
    </section>
  );
}

const sights = {
  whole: 'On the drawing it is the length that is marked.',
  half: 'On the drawing half of it is marked.',
  by: 'It is no length of the drawing itself; what was found from it is marked there.',
  nowhere: 'It is no length of the drawing.',
} as const;

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
