import { useMemo, useState } from 'preact/hooks';
import { useUrl } from '../drawing/use-url.ts';
import { Construction } from '../learn/construction.tsx';
import { DrawingNames } from '../learn/drawing-names.tsx';
import type { Lesson, TaughtStep } from '../learn/lesson.ts';
import { drawingNames, drawingOf } from '../learn/lesson-drawings.ts';
import { numberSeen } from '../learn/number-seen.ts';
import { restingOn } from '../learn/own.ts';
import { sameIn, unlessSame } from '../unless-same.ts';
import type { RanDraft } from './questions.ts';

interface DrawnProps {
  readonly ran: RanDraft | undefined;
  /** The step whose line the cursor is in. */
  readonly step: number | undefined;
  readonly goTo: (step: number) => void;
  readonly strange: boolean;
}

/** The sheet in words, with what is wrong with the pieces on it. */
const sheetAlt = ({ title, ok, issues }: RanDraft): string => {
  const wrong = issues.filter(({ severity }) => severity === 'error').map(({ message }) => message);
  return `${title}: its pieces on one sheet. ${ok ? 'Every check is true.' : `Not as it should be: ${wrong.join(' ')}`}`;
};

const nothing: ReadonlySet<number> = new Set();

/**
 * What is lit of a step: the lines that it draws; of one that draws none the length that it comes to, or else what rests on it; and on
 * which drawing that is.
 */
function seenOf(lesson: Lesson, step: TaughtStep) {
  if (step.draws.length > 0) return { lit: new Set([step.number]) };
  const number = numberSeen(lesson, step, 'outcome');
  if (number?.as === 'length') return { lit: nothing, number, on: number.dimension.on };
  const lit = restingOn(step.number, lesson);
  const drawn = lesson.steps.find(({ number, draws }) => lit.has(number) && draws.length > 0);
  return { lit, on: drawn?.draws.at(-1)?.on };
}

/**
 * What the code draws: the construction, in which a step leads to its line, or the sheet of pieces. It stays as it is while other
 * things happen beside it, such as types that are checked: drawing it again takes longer than all the rest of the view.
 */
export const Drawn = unlessSame<DrawnProps>(DrawnNow, sameIn(['ran', 'step', 'goTo', 'strange']));

function DrawnNow({ ran, step, goTo, strange }: DrawnProps) {
  const [shows, show] = useState<'construction' | 'pieces'>('construction');
  const [chosen, choose] = useState<{ readonly on: string; readonly step: number | undefined }>();
  const lesson = ran?.lesson;
  const shown = lesson?.steps.find(({ number }) => number === step);
  const seen = useMemo(() => (lesson && shown ? seenOf(lesson, shown) : undefined), [lesson, shown]);
  const own = seen?.on ?? (lesson && drawingOf(lesson, step ?? 0));
  const names = lesson ? drawingNames(lesson) : [];
  const on = chosen !== undefined && chosen.step === step && names.includes(chosen.on) ? chosen.on : own;
  const url = useUrl(ran?.sheet);
  if (!ran) return <p class="empty">{strange ? 'Nothing of it has been run yet.' : 'Drafting …'}</p>;
  const isConstruction = shows === 'construction' && lesson !== undefined && on !== undefined;
  return (
    <>
      <p class="row">
        <button type="button" aria-pressed={isConstruction} onClick={() => show('construction')}>
          The construction
        </button>
        <button type="button" aria-pressed={!isConstruction} onClick={() => show('pieces')}>
          The pieces
        </button>
      </p>
      {shown && (
        <p>
          <strong>
            {shown.number}. {shown.title}:
          </strong>{' '}
          {shown.words.map(({ text }) => text).join('')}
        </p>
      )}
      <div class="sheet">
        {isConstruction ? (
          <Construction
            lesson={lesson}
            on={on}
            step={lesson.steps.length}
            lit={seen?.lit ?? nothing}
            dimension={seen?.number?.dimension}
            amount={seen?.number?.amount}
            goTo={goTo}
          />
        ) : (
          url && <img src={url} alt={sheetAlt(ran)} />
        )}
      </div>
      {isConstruction && <DrawingNames names={names} on={on} choose={(name) => choose({ on: name, step })} />}
      {shows === 'construction' && on === undefined && (
        <p class="quiet">This draft draws nothing step by step, so its pieces are shown.</p>
      )}
    </>
  );
}
