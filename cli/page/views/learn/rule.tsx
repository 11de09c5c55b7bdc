import { capital } from '../../../../drafts/index.ts';
import type { Lesson, TaughtRule } from './lesson.ts';
import type { ShownLesson } from './own.ts';
import { ruleSlider } from './rule-slider.ts';
import type { Teach } from './teach.ts';

interface RuleProps {
  readonly rule: TaughtRule;
  readonly says: string;
  readonly shown: ShownLesson;
  readonly teach: Teach;
  readonly takeOver?: (() => void) | undefined;
}

const signs = { mm: 'mm', degrees: '°', ratio: '', 'per mm': 'for each mm' } as const;

/** A rule that can be turned: everything that rests on it moves. */
export function Rule({ rule, says, shown, teach, takeOver }: RuleProps) {
  const { id, unit } = rule;
  const own = ruleOf(shown.plain, id)?.value ?? rule.value;
  const now = shown.turned[id] ?? own;
  const slider = ruleSlider(own, unit);
  const turn = (value: number): void => {
    if (Number.isFinite(value)) teach({ does: 'turn rule', id, value: value === own ? undefined : value });
  };
  const moved = shown.moved.steps;
  return (
    <>
      <h3>
        Rule {id}, {figureOf(now)} {signs[unit]}
      </h3>
      <p>{capital(says)}</p>
      <div class="field figure">
        <label for="rule-value">Turn it</label>
        <span class="entry">
          <input
            id="rule-value"
            type="number"
            step="any"
            value={figureOf(now)}
            onChange={({ currentTarget }) => turn(currentTarget.valueAsNumber)}
          />
          <span class="unit">{signs[unit]}</span>
        </span>
        <span class="slide">
          <span aria-hidden="true">{figureOf(slider.min)}</span>
          <input
            type="range"
            aria-label={`Rule ${id}, from ${figureOf(slider.min)} to ${figureOf(slider.max)} ${signs[unit]}`.trim()}
            aria-valuetext={`${figureOf(now)} ${signs[unit]}`.trim()}
            min={slider.min}
            max={slider.max}
            step={slider.step}
            value={now}
            onInput={({ currentTarget }) => turn(Number(figureOf(currentTarget.valueAsNumber)))}
          />
          <span aria-hidden="true">{figureOf(slider.max)}</span>
        </span>
      </div>
      {now !== own && (
        <p class="row">
          <button type="button" onClick={() => teach({ does: 'turn rule', id, value: undefined })}>
            Back to {figureOf(own)}
          </button>
          {takeOver && (
            <button type="button" onClick={takeOver}>
              Write it into the code
            </button>
          )}
        </p>
      )}
      {now !== own && (
        <p class="quiet" role="status">
          {moved.length === 0
            ? 'No step comes to another figure for it on this body.'
            : `${moved.length === 1 ? 'One step has' : `${moved.length} steps have`} moved; the lines as they were lie under them in grey.`}
        </p>
      )}
    </>
  );
}

/** A rule as some step of a lesson was found from it. */
const ruleOf = (lesson: Lesson, id: string): TaughtRule | undefined =>
  lesson.steps.flatMap(({ grounds }) => grounds).find(({ rule }) => rule?.id === id)?.rule;

/** Digits of a rule: no more than a draft writes. */
const figureOf = (value: number): string => String(Math.round(value * 1e4) / 1e4);
