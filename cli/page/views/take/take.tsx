import { saveFile } from '../../save-file.ts';
import { askedDraft, isUntouched, taken } from '../../state.ts';
import { offeredOn, shelves, type Takeable, takeableNames } from '../../takeables.ts';
import type { TakenFile } from '../../taken-file.ts';
import { Cautions } from '../cautions.tsx';
import { AllSaid } from '../said.tsx';
import type { FileViewProps } from '../view.ts';
import { paperAsked, type TakeAction } from './own.ts';
import { PaperChoice } from './paper-choice.tsx';
import { Zip } from './zip.tsx';

/** What is to be printed and carried away, file by file or all as one. */
export function Take(props: FileViewProps) {
  const { state, send, ask } = props;
  const made = taken(state);
  const own = state.own.take;
  const errors = state.answer?.issues.filter(({ severity }) => severity === 'error') ?? [];
  const paper = paperAsked(own);
  const act = (what: TakeAction): void => send({ does: 'within', view: 'take', what });
  const write = (writings: readonly Takeable[], zip = false): void => {
    const number = own.number + 1;
    act({ does: 'begin', number });
    ask({ kind: 'take', number, asked: askedDraft(state), writings, paper, zip });
  };
  const file = (name: string): TakenFile | undefined => made?.files.find((each) => each.name === name);
  const pieces = (made?.files ?? []).filter(({ name }) => name.endsWith('.svg') && name !== 'sheet.svg');
  return (
    <>
      <h1 tabIndex={-1}>Print and take</h1>
      {made ? (
        <p class="lead">
          The {made.garment} for {made.body}, to the letter as the command line writes it.
        </p>
      ) : (
        <p>{isUntouched(state) ? 'Nothing is drawn yet.' : 'There is no pattern to take:'}</p>
      )}
      <AllSaid issues={errors} hers={{ state, send }} />
      <div class="taking">
        <p role="status">{own.busy ?? own.last ?? ''}</p>
        <AllSaid issues={own.issues} />
      </div>
      {made && (
        <div class="shelves">
          {shelves.map((shelf) => (
            <section key={shelf} aria-label={shelf}>
              <h2>{shelf}</h2>
              {shelf === 'On paper' && <PaperChoice own={own} act={act} units={made.units} />}
              <ul class="takes">
                {offeredOn(shelf, made.garment, paper).map(({ writing, file: name, says }) => (
                  <li key={writing}>
                    <button type="button" disabled={own.busy !== undefined} onClick={() => write([writing])}>
                      {name}
                    </button>{' '}
                    {says}
                  </li>
                ))}
              </ul>
              {shelf === 'On paper' && (
                <p class="quiet">
                  Print at 100 %, “actual size”. Measure both test squares on the print before you cut.
                </p>
              )}
            </section>
          ))}
          <section aria-label="Drawings and figures">
            <h2>Drawings and figures</h2>
            <ul class="takes">
              <Ready file={file('sheet.svg')} says="all pieces on one sheet, 1:1" />
              <Ready file={file('report.json')} says="every figure of the checks, as data" />
            </ul>
            <details>
              <summary>Each piece by itself, 1:1</summary>
              <ul class="takes">
                {pieces.map((piece) => (
                  <Ready key={piece.name} file={piece} says="" />
                ))}
              </ul>
            </details>
          </section>
          <Measurements {...props} />
          <Zip own={own} act={act} take={() => write(included(own.without), true)} />
        </div>
      )}
      {made && <Cautions made={made} />}
      {!made && <Measurements {...props} />}
    </>
  );
}

const included = (without: readonly Takeable[]): readonly Takeable[] =>
  takeableNames.filter((name) => !without.includes(name));

/** A file that is there already. */
const Ready = ({ file, says }: { file: TakenFile | undefined; says: string }) =>
  file ? (
    <li>
      <button type="button" onClick={() => saveFile(file)}>
        {file.name}
      </button>{' '}
      {says}
    </li>
  ) : null;

const Measurements = ({ state, ask }: FileViewProps) => (
  <section aria-label="The measurements">
    <h2>The measurements</h2>
    <p>As a file that this page and the command line open again.</p>
    <ul class="takes">
      {(['yaml', 'json'] as const).map((as) => (
        <li key={as}>
          <button
            type="button"
            disabled={isUntouched(state)}
            onClick={() => ask({ kind: 'write', as, body: askedDraft(state).body })}
          >
            Save as {as.toUpperCase()}
          </button>
        </li>
      ))}
    </ul>
  </section>
);
