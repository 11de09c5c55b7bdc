import type { TaughtStep } from './lesson.ts';
import type { PointedNumber } from './own.ts';

interface SentenceProps {
  readonly step: TaughtStep;
  readonly pointed: PointedNumber | undefined;
  readonly point: (pointed: PointedNumber | undefined) => void;
}

/** The sentence of a step. Each number in it is a button that asks where it came from. */
export function Sentence({ step: { words }, pointed, point }: SentenceProps) {
  return (
    <p class="sentence">
      {words.map(({ text, is }, i) => {
        if (is === 'words') return text;
        const which = is === 'outcome' ? is : is.from;
        return (
          <button
            key={i}
            type="button"
            class="number"
            aria-pressed={pointed === which}
            aria-controls="whence"
            onClick={() => point(pointed === which ? undefined : which)}
          >
            {text}
          </button>
        );
      })}
    </p>
  );
}
