import type { Lesson, TaughtStep } from './lesson.ts';
import type { MovedStep } from './own.ts';
import type { Teach } from './teach.ts';

interface ContentsProps {
  readonly lesson: Lesson;
  /** The step that is shown. */
  readonly at: number;
  readonly moved: readonly MovedStep[];
  readonly teach: Teach;
}

/** All steps under their headings; those that moved say from where. */
export function Contents({ lesson, at, moved, teach }: ContentsProps) {
  const movedBy = new Map(moved.map(({ step, before }) => [step.number, before]));
  return (
    <nav class="contents" aria-label="Steps">
      {chapters(lesson.steps).map(({ heading, steps }) => (
        <details key={`${heading} ${steps[0]?.number}`} open={steps.some(({ number }) => number === at)}>
          <summary>
            {heading}
            {steps.some(({ number }) => movedBy.has(number)) ? ' (moved)' : ''}
          </summary>
          <ol>
            {steps.map(({ number, title, amount }) => (
              <li key={number} value={number}>
                <button
                  type="button"
                  class="plain"
                  aria-current={number === at ? 'step' : undefined}
                  onClick={() => teach({ does: 'go to step', step: number })}
                >
                  {title}
                </button>{' '}
                {movedBy.has(number) && (
                  <span class="moved">
                    {movedBy.get(number)} → {amount}
                  </span>
                )}
              </li>
            ))}
          </ol>
        </details>
      ))}
    </nav>
  );
}

interface StepChapter {
  readonly heading: string;
  readonly steps: readonly TaughtStep[];
}

function chapters(steps: readonly TaughtStep[]): readonly StepChapter[] {
  const found: { heading: string; steps: TaughtStep[] }[] = [];
  for (const step of steps) {
    const last = found.at(-1);
    if (last?.heading === step.heading) last.steps.push(step);
    else found.push({ heading: step.heading, steps: [step] });
  }
  return found;
}
