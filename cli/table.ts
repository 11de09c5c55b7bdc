/** A column of a printed table: its heading, and on which side its words stand. */
export interface Column {
  readonly title: string;
  readonly right?: true;
}

/** Rows of words in columns just wide enough for them, two spaces apart. */
export function table(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map((column, i) =>
    Math.max(column.title.length, ...rows.map((row) => (row[i] ?? '').length)),
  );
  const line = (cells: readonly string[]): string =>
    columns
      .map(({ right }, i) => {
        const width = widths[i] ?? 0;
        return right ? (cells[i] ?? '').padStart(width) : (cells[i] ?? '').padEnd(width);
      })
      .join('  ')
      .trimEnd();
  return [line(columns.map((column) => column.title)), ...rows.map(line)].map((text) => `${text}\n`).join('');
}

/** A number with so many decimals, and no minus before a zero. */
export const fixed = (value: number, decimals: number): string =>
  value.toFixed(decimals).replace(/^-(?=[0.]*$)/, '');
