import type { Issue } from '../issue.ts';
import { fileNote } from './file-issues.ts';
import type { DrawnLines } from './read-shapes.ts';

/** What of a drawing cannot be read, and what is left alone: `path-unreadable`, `left-out`. */
export function drawingRemarks({ unreadable, leftOut }: DrawnLines): readonly Issue[] {
  const [first] = unreadable;
  const more = unreadable.length > 1 ? ` (and ${unreadable.length - 1} more)` : '';
  const read = first ? [`A ${first.element.name} cannot be read: ${first.reason}${more}.`] : [];
  const left =
    leftOut.size > 0
      ? `Left alone: ${[...leftOut].map((name) => leftOutWords[name] ?? name).join(', ')}.`
      : '';
  return [
    ...read.map(
      (message): Issue => ({ code: 'path-unreadable', severity: 'warning', path: 'file', message }),
    ),
    ...(left ? [fileNote('left-out', left)] : []),
  ];
}

const leftOutWords: Readonly<Record<string, string>> = {
  use: 'copies of other lines (use)',
  image: 'pictures',
  foreignObject: 'things that are no drawing',
  script: 'a script, which is never run',
  style: 'rules of style that would move or hide lines',
  svg: 'a drawing within the drawing',
};
