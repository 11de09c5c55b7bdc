import { bodyData } from '../../body-form.ts';
import { saveFile } from '../../save-file.ts';
import { isUntouched, taken } from '../../state.ts';
import type { TakenFile } from '../../taken-file.ts';
import { AllSaid } from '../said.tsx';
import type { FileViewProps } from '../view.ts';

/** What is to be carried away, file by file. */
export function Take({ state, ask }: FileViewProps) {
  const made = taken(state);
  const body = bodyData(state.form);
  const file = (name: string): TakenFile | undefined => made?.files.find((each) => each.name === name);
  const pieces = (made?.files ?? []).filter(({ name }) => name.endsWith('.svg') && name !== 'sheet.svg');
  const errors = state.answer?.issues.filter(({ severity }) => severity === 'error') ?? [];
  return (
    <>
      <h1 tabIndex={-1}>Take</h1>
      {made ? (
        <p class="lead">
          The {made.garment} for {made.body}, to the letter as the command line writes it.
        </p>
      ) : (
        <p>{isUntouched(state) ? 'Nothing is drawn yet.' : 'There is no pattern to take:'}</p>
      )}
      <AllSaid issues={errors} />
      {made && (
        <section aria-label="The pattern">
          <h2>The pattern</h2>
          <ul class="takes">
            <Taking file={file('sheet.svg')} says="all pieces on one sheet, 1:1" />
            <Taking file={file('report.json')} says="every figure of the checks, as data" />
          </ul>
          <details>
            <summary>Each piece by itself, 1:1</summary>
            <ul class="takes">
              {pieces.map((piece) => (
                <Taking key={piece.name} file={piece} says="" />
              ))}
            </ul>
          </details>
          <p class="quiet">
            Measure the 50 mm square on the print before you cut. Sew a trial bodice first (it is one of the
            garments): no figure stands in for a fitting.
          </p>
        </section>
      )}
      <section aria-label="The measurements">
        <h2>The measurements</h2>
        <p>As a file that this page and the command line open again.</p>
        <ul class="takes">
          {(['yaml', 'json'] as const).map((as) => (
            <li key={as}>
              <button
                type="button"
                disabled={isUntouched(state)}
                onClick={() => ask({ kind: 'write', as, body })}
              >
                Save as {as.toUpperCase()}
              </button>
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}

const Taking = ({ file, says }: { file: TakenFile | undefined; says: string }) =>
  file ? (
    <li>
      <button type="button" onClick={() => saveFile(file)}>
        {file.name}
      </button>{' '}
      {says}
    </li>
  ) : null;
