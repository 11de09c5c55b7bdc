import { bodyData } from '../../body-form.ts';
import { fileWord } from '../../file-word.ts';
import { isUntouched, type PageState } from '../../state.ts';
import { invented } from '../measure/invented.ts';
import type { SizesAction } from './own.ts';

interface BodyFilesProps {
  readonly state: PageState;
  readonly act: (what: SizesAction) => void;
  readonly note: (notice: string) => void;
}

/** The body files that the chart names and that did not come with it: what is kept here can stand in their place. */
export function BodyFiles({ state, act, note }: BodyFilesProps) {
  const { needs } = state.own.sizes;
  if (needs.length === 0) return null;
  const hers = JSON.stringify(bodyData(state.form));
  const called = state.form.name.trim() || 'the form';
  const take = (file: string, text: string): void => act({ does: 'bodies', bodies: [{ file, text }] });
  return (
    <section aria-label="Body files that the chart names" class="body-files">
      <p>
        The chart names measurements in {needs.length === 1 ? 'a file of its own' : 'files of their own'}:
        choose {needs.length === 1 ? 'it' : 'them'} above, drop {needs.length === 1 ? 'it' : 'them'} on the
        page, or take what is here already.
      </p>
      <ul>
        {needs.map((file) => {
          const shipped = invented.find((name) => `${fileWord(name)}.yaml` === file);
          return (
            <li key={file}>
              <strong>{file}</strong>{' '}
              {shipped && (
                <button
                  type="button"
                  onClick={async () => {
                    const found = await fetch(`bodies/${file}`).catch(() => undefined);
                    if (found?.ok) take(file, await found.text());
                    else note(`${file} could not be loaded.`);
                  }}
                >
                  The invented {shipped}
                </button>
              )}{' '}
              <button type="button" disabled={isUntouched(state)} onClick={() => take(file, hers)}>
                The measurements of {called}
              </button>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
