import { saveFile } from '../../save-file.ts';
import { askedDraft, isUntouched, taken } from '../../state.ts';
import { patternName, type Takeable, takeableNames } from '../../takeables.ts';
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
  const asking = { busy: own.busy !== undefined, write };
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
      <AllSaid issues={errors} />
      <div class="taking">
        <p role="status">{own.busy ?? own.last ?? ''}</p>
        <AllSaid issues={own.issues} />
      </div>
      {made && (
        <div class="shelves">
          <section aria-label="On paper">
            <h2>On paper</h2>
            <PaperChoice own={own} act={act} units={made.units} />
            <ul class="takes">
              <Asked {...asking} writing="pattern" name={patternName(made.garment, paper)}>
                1:1, in tiles behind a cover that maps them, or whole
              </Asked>
              <Asked {...asking} writing="projector" name={patternName(made.garment, 'projector')}>
                1:1 for a projector over the table
              </Asked>
            </ul>
            <p class="quiet">
              Print at 100 %, “actual size”. Measure both test squares on the print before you cut.
            </p>
          </section>
          <section aria-label="To sew by">
            <h2>To sew by</h2>
            <ul class="takes">
              <Asked {...asking} writing="sewing print" name="sewing.pdf">
                step by step, with what to buy
              </Asked>
              <Asked {...asking} writing="sewing page" name="sewing.html">
                the same for a screen
              </Asked>
            </ul>
          </section>
          <section aria-label="To learn from">
            <h2>To learn from</h2>
            <ul class="takes">
              <Asked {...asking} writing="lesson print" name="lesson.pdf">
                how it is drawn, with her numbers
              </Asked>
              <Asked {...asking} writing="lesson page" name="lesson.html">
                the same for a screen
              </Asked>
            </ul>
          </section>
          <section aria-label="For a cutting machine">
            <h2>For a cutting machine</h2>
            <ul class="takes">
              <Asked {...asking} writing="dxf" name="cutting.dxf">
                for any machine: curves as polylines
              </Asked>
              <Asked {...asking} writing="dxf-curves" name="cutting-curves.dxf">
                exact curves
              </Asked>
            </ul>
          </section>
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

interface AskedProps {
  readonly busy: boolean;
  readonly write: (writings: readonly Takeable[]) => void;
  readonly writing: Takeable;
  readonly name: string;
  readonly children: string;
}

/** A file that is written when it is asked for. */
const Asked = ({ busy, write, writing, name, children }: AskedProps) => (
  <li>
    <button type="button" disabled={busy} onClick={() => write([writing])}>
      {name}
    </button>{' '}
    {children}
  </li>
);

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
