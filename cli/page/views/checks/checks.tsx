import { measurementNames, unitLabel } from '../../../../drafts/index.ts';
import type { CheckRow, PageIssue } from '../../messages.ts';
import { AllSaid } from '../said.tsx';
import type { ViewProps } from '../view.ts';

/** The figures of the report. */
export function Checks({ state }: ViewProps) {
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
        <AllSaid issues={issues} />
      </>
    );
  const { girths, seams, joins, shapes, notches } = made.checks;
  const outside = shapes.filter(({ ok }) => !ok).length;
  const remarks = issues.filter((issue) => !ofBody(issue));
  return (
    <>
      <h1 tabIndex={-1}>Checks</h1>
      <p class="lead">
        {made.ok
          ? `All true: ${seams.length} seams walked, ${joins.length} corners, ${girths.length} girths and ${notches} notches, read back from the sheet itself.`
          : 'Not all is true. What is not stands here:'}
      </p>
      <AllSaid issues={remarks} />
      <p class="quiet">Lengths in {unitLabel[made.units]}.</p>
      <Figures
        title="Girths, finished"
        heads={['level', 'body', 'ease', 'finished', 'off by']}
        rows={girths}
      />
      <Figures
        title="Seams"
        heads={['seam', 'one side', 'the other', 'eased or gathered', 'off by']}
        rows={seams}
      />
      <Figures title="Corners across seams" heads={['where', 'corner left']} rows={joins} />
      <Figures
        title={`Shapes, ${outside === 0 ? 'all' : `${shapes.length - outside} of ${shapes.length}`} in their bands`}
        heads={['shape', 'piece', 'measured', 'band']}
        rows={shapes}
        odd="outside"
      />
    </>
  );
}

interface FiguresProps {
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly CheckRow[];
  /** What is said of a row that is not as it should be. */
  readonly odd?: string;
}

/** One table; it may be wider than a phone, and then moves by itself. */
function Figures({ title, heads, rows, odd = 'not true' }: FiguresProps) {
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
            {rows.map(({ cells: [name, ...cells], ok }, i) => (
              <tr key={i} class={ok ? undefined : 'odd'}>
                <th scope="row">{name}</th>
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
