/** Whether a file is a table by its name. */
export const isCsv = (file: string): boolean => /[^/\\]\.[ct]sv$/i.test(file);

/** Rows as a CSV file (RFC 4180): cells with a comma, a quote or a line end in quotes, lines ended by CR LF. */
export const csv = (rows: readonly (readonly (string | number)[])[]): string =>
  rows.map((row) => `${row.map(cell).join(',')}\r\n`).join('');

/**
 * One cell. A text that a spreadsheet would take for a formula is led by an apostrophe, which spreadsheets do not show:
 * names come from files.
 */
function cell(value: string | number): string {
  const text = typeof value === 'number' ? String(value) : value.replace(/^(?=[=+@-])/, "'");
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
