import { useEffect, useRef } from 'preact/hooks';
import { capital, measurementWords } from '../../../../drafts/index.ts';
import { askedDraft } from '../../state.ts';
import type { FileViewProps } from '../view.ts';
import { essential } from './field.tsx';
import { Figure, Held } from './figure.tsx';
import { toldSize } from './told-size.ts';

/** So long nothing must have been typed before a body is looked at closely, ms. */
const pause = 350;

/** Has her body studied, again whenever it has changed, one study at a time. */
export function useStudy({ state, ask }: FileViewProps): void {
  const { studied } = state.own.measure;
  const asked = useRef<string | undefined>(studied?.of);
  const wanted = askedDraft(state);
  const of = JSON.stringify(wanted);
  const busy = asked.current !== studied?.of;
  useEffect(() => {
    if (busy || asked.current === of) return;
    const begin = setTimeout(() => {
      asked.current = of;
      ask({ kind: 'study', ...wanted, of });
    }, pause);
    return () => clearTimeout(begin);
  }, [of, busy]);
}

/** Beside the form: where the tape lies and how it is held, and what to take again. */
export function Beside({ state }: Pick<FileViewProps, 'state'>) {
  const { studied, at } = state.own.measure;
  if (!studied) return null;
  return (
    <aside class="her" aria-label="Her figure">
      {at ? (
        <Held at={at} />
      ) : (
        <p class="quiet">
          {studied.figure.hers
            ? 'Her form, computed from her measurements.'
            : [...essential].every((name) => state.form.sizes[name])
              ? 'A usual form, until hers can be computed.'
              : 'A usual form: hers is drawn once the four that are needed are there.'}{' '}
          In a field the tape shows where it lies.
        </p>
      )}
      <Figure figure={studied.figure} at={at} told={at && toldSize(state, at)} />
      <TakeAgain state={state} />
    </aside>
  );
}

/** Which three are best taken again, and why. */
export function TakeAgain({ state }: Pick<FileViewProps, 'state'>) {
  const { studied } = state.own.measure;
  if (!studied || studied.again.length === 0) return null;
  return (
    <section class="again" aria-label="What to take again first">
      <h2>Take these again first</h2>
      <p class="quiet">They move the {state.garment} most for what they may be off.</p>
      <ol>
        {studied.again.map(({ name, because }) => (
          <li key={name}>
            <a
              href={`#${state.view}`}
              onClick={(event) => {
                event.preventDefault();
                document.getElementById(name)?.focus();
              }}
            >
              {capital(measurementWords(name))}
            </a>
            . {because}
          </li>
        ))}
      </ol>
    </section>
  );
}
