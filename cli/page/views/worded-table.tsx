import type { WordTable } from '../../../drafts/index.ts';

interface WordedTableProps {
  /** What it is of, for who cannot see it. */
  readonly title: string;
  readonly table: WordTable;
  /** Rows that are not as they should be, and what is said of them. */
  readonly odd?: ReadonlySet<number>;
  readonly oddWord?: string;
}

/** A column with a longer cell holds words, and is set as they are. */
const longest = 24;

/** A table of words and figures; it may be wider than a phone, and then moves by itself. */
export function WordedTable({ title, table: { titles, rows }, odd, oddWord = '' }: WordedTableProps) {
  const marked = odd !== undefined && odd.size > 0;
  const isProse = titles.map((_, i) => rows.some((row) => (row[i]?.length ?? 0) > longest));
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard (WCAG 2.1.1).
    <section class="table" tabIndex={0} aria-label={`${title}, table`}>
      <table>
        <thead>
          <tr>
            {titles.map((head, i) =>
              head === '' ? (
                <td key={i} />
              ) : (
                <th key={i} scope="col">
                  {head}
                </th>
              ),
            )}
            {marked && <td />}
          </tr>
        </thead>
        <tbody>
          {rows.map(([name, ...cells], i) => (
            <tr key={i} class={odd?.has(i) ? 'odd' : undefined}>
              <th scope="row">{name}</th>
              {cells.map((cell, j) => (
                <td key={j} class={isProse[j + 1] ? 'prose' : undefined}>
                  {cell}
                </td>
              ))}
              {marked && <td>{odd?.has(i) ? oddWord : ''}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
