import { measurementNames, unitLabel } from '../../../../drafts/index.ts';
import type { CheckRow, DrawnPlace } from '../../messages.ts';
import type { PageIssue } from '../../page-issue.ts';
import { Drawing } from '../drawing/drawing.tsx';
import { type Lit, lineKey } from '../drawing/drawn-piece.tsx';
import { AllSaid } from '../said.tsx';
import type { ViewProps } from '../view.ts';

/** The figures of the report. */
export function Checks({ state, send }: ViewProps) {
  const { made, answer } = state;
  const issues = answer?.issues ?? [];
  const measured: readonly string[] = measurementNames;
  const ofBody = ({ path, severity }: PageIssue): boolean => severity !== 'error' && measured.includes(path);
  if (!made || !answer?.made)
    return (
      <>
        <h1 tabIndex={-1}>Checks</h1>
        <p>
          {answer && issues.length > 0
            ? 'Nothing could be drawn, and so nothing checked:'
            : 'Nothing is drawn yet.'}
        </p>
        <AllSaid issues={issues} hers={{ state, send }} />
      </>
    );
  const { girths, seams, joins, shapes, notches } = made.checks;
  const outside = shapes.filter(({ ok }) => !ok).length;
  const remarks = issues.filter((issue) => !ofBody(issue));
  const { figure, places } = state.own.checks;
  const show = (name: string, at: readonly DrawnPlace[]): void =>
    send({
      does: 'within',
      view: 'checks',
      what: {
        does: 'show place',
        ...(name === figure ? { figure: undefined, places: [] } : { figure: name, places: at }),
      },
    });
  const shared = { shown: figure, show };
  const lit: Lit = new Map(places.map(({ piece, line }) => [lineKey(piece, line ?? ''), 'touched']));
  return (
    <div class={state.wide ? 'checking wide' : 'checking'}>
      <div>
        <h1 tabIndex={-1}>Checks</h1>
        <p class="lead">
          {made.ok
            ? `All true: ${seams.length} seams walked, ${joins.length} corners, ${girths.length} girths and ${notches} notches, ${made.proven ? 'read back from the sheet itself' : 'as drafted; the written sheet is read back in a moment'}.`
            : 'Not all is true. What is not stands here:'}
        </p>
        <p class="quiet">Each figure leads to its place on the drawing.</p>
        <AllSaid issues={remarks} hers={{ state, send }} />
        <p class="quiet">Lengths in {unitLabel[made.units]}.</p>
        <Figures
          title="Girths, finished"
          heads={['level', 'body', 'ease', 'finished', 'off by']}
          {...shared}
          rows={girths}
        />
        <Figures
          title="Seams"
          heads={['seam', 'one side', 'the other', 'eased or gathered', 'off by']}
          {...shared}
          rows={seams}
        />
        <Figures title="Corners across seams" heads={['where', 'corner left']} {...shared} rows={joins} />
        <Figures
          title={`Shapes, ${outside === 0 ? 'all' : `${shapes.length - outside} of ${shapes.length}`} in their bands`}
          heads={['shape', 'piece', 'measured', 'band']}
          {...shared}
          rows={shapes}
          odd="outside"
        />
      </div>
      <aside class="place" aria-label="The drawing" id="place">
        <Drawing state={state} send={send} aspect={state.wide ? 0.9 : 1.1} lit={lit} />
        <p class="quiet" role="status">
          {figure === undefined ? '' : `${figure} is marked on the drawing.`}
        </p>
      </aside>
    </div>
  );
}

interface FiguresProps {
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly CheckRow[];
  readonly shown: string | undefined;
  readonly show: (figure: string, places: readonly DrawnPlace[]) => void;
  /** What is said of a row that is not as it should be. */
  readonly odd?: string;
}

/** One table; it may be wider than a phone, and then moves by itself. */
function Figures({ title, heads, rows, shown, show, odd = 'not true' }: FiguresProps) {
  if (rows.length === 0) return null;
  const all = [...heads, ''];
  return (
    <section aria-label={title}>
      <h2>{title}</h2>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard (WCAG 2.1.1). */}
      <section class="table" tabIndex={0} aria-label={`${title}, table`}>
        <table>
          <thead>
            <tr>
              {all.map((head) =>
                head === '' ? (
                  <td key="ok" />
                ) : (
                  <th key={head} scope="col">
                    {head}
                  </th>
                ),
              )}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ cells: [name = '', ...cells], ok, places }, i) => (
              <tr key={i} class={ok ? undefined : 'odd'}>
                <th scope="row">
                  <button
                    type="button"
                    class="plain"
                    aria-pressed={shown === name}
                    onClick={() => show(name, places)}
                  >
                    {name}
                  </button>
                </th>
                {cells.map((cell, j) => (
                  <td key={j}>{cell}</td>
                ))}
                <td>{ok ? '' : odd}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}
