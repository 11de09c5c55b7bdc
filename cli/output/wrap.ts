import { lineEnds } from '../../engine/text/line-ends.ts';
import { displayWidth } from './display-width.ts';

/** What a line begins with that the lines below it stand clear of: a number, or a label with white behind it. */
const sign = /^\s*(?:\d+\. |\S+(?: \S+)* {2,})/;

/**
 * A text in lines no wider than `width` columns. A line that is too long goes on below, under its own beginning: as far in
 * as it began, behind its number or label, or `hang` further where it has neither. What has no blanks is cut.
 */
export const wrapped = (text: string, width: number, hang = 0): string =>
  text
    .split('\n')
    .flatMap((line) => (displayWidth(line) <= width ? [line] : broken(line, width, hang)))
    .join('\n');

function broken(line: string, width: number, hang: number): readonly string[] {
  // Deep in, there would be no room left for words.
  const most = Math.floor(width / 2);
  const begins = Math.min(line.length - line.trimStart().length, most);
  const behind = sign.exec(line)?.[0] ?? '';
  const labelled = behind !== '' && displayWidth(behind) <= most;
  const first = labelled ? behind : ' '.repeat(begins);
  const below = ' '.repeat(labelled ? displayWidth(behind) : Math.min(begins + hang, most));
  const words = (labelled ? line.slice(behind.length) : line.trim()).split(lineEnds);
  const lines: string[] = [];
  let current = first;
  let empty = true;
  for (const word of words.flatMap((each) => cut(each, width - below.length))) {
    if (!empty && displayWidth(current) + 1 + displayWidth(word) > width) {
      lines.push(current.trimEnd());
      [current, empty] = [below, true];
    }
    current += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, current.trimEnd()];
}

/** A word in parts no wider than `room`. */
function cut(word: string, room: number): readonly string[] {
  if (displayWidth(word) <= room) return [word];
  const parts: string[] = [];
  let part = '';
  for (const letter of word) {
    if (displayWidth(part + letter) > room) {
      parts.push(part);
      part = '';
    }
    part += letter;
  }
  return [...parts, part];
}
