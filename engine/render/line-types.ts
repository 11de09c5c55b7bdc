/**
 * The kinds of line on paper, told apart by dashes and weight alone so that any printer will do. Widths and
 * dashes are millimetres on paper.
 */
export const lineTypes = [
  { class: 'cut', says: 'cutting line', width: 0.7, dashes: '' },
  { class: 'stitch', says: 'stitching line', width: 0.35, dashes: '4 2' },
  { class: 'fold', says: 'fold', width: 0.4, dashes: '9 2 1 2' },
  { class: 'casing', says: 'casing', width: 0.3, dashes: '2 1 2 3' },
  { class: 'gather', says: 'gathering', width: 0.6, dashes: '0.01 1.6' },
  { class: 'slash', says: 'slash line', width: 0.2, dashes: '9 5' },
  { class: 'level', says: 'level line', width: 0.18, dashes: '' },
  { class: 'grain', says: 'grain', width: 0.35, dashes: '' },
] as const;

export type LineClass = (typeof lineTypes)[number]['class'];

/**
 * The style sheet of every drawing. A stitching line on a fold shows no dashes of its own: the cutting line runs
 * there.
 */
export const styleSheet = [
  'path,circle,rect{fill:none;stroke:#000;stroke-linejoin:round}',
  '.paper{fill:#fff;stroke:none}',
  ...lineTypes.map(
    ({ class: name, width, dashes }) =>
      `.${name},.key-${name}{stroke-width:${width}${dashes ? `;stroke-dasharray:${dashes}` : ''}}`,
  ),
  '.gather,.key-gather{stroke-linecap:round}',
  '.stitch[data-turn="fold"]{stroke:none}',
  '.notch,.buttonhole,.bar,.drill{stroke-width:0.4}',
  '.square{stroke-width:0.25}',
  '.arrow{fill:#000;stroke:none}',
  'text{font-family:sans-serif;font-size:3.5px;fill:#000}',
  '.name{font-size:6px;font-weight:bold}',
  '.small{font-size:2.8px}',
].join('\n');
