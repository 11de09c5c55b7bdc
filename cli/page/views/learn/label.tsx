/** Where words may stand on a drawing, and how large a letter is, in mm of it. */
export interface LabelRoom {
  readonly left: number;
  readonly right: number;
  readonly letter: number;
}

interface LabelProps {
  readonly x: number;
  readonly y: number;
  /** Whether the words end at their place, rather than begin there. */
  readonly ends: boolean;
  readonly room: LabelRoom;
  readonly text: string;
  readonly bold?: boolean;
}

/** A letter is about so wide, on average, in shares of its size; rather more than less. */
const wide = { plain: 0.56, bold: 0.66 };

/** Words beside a place of a drawing. They stay on it: what is too long is moved in, and what is longer than it goes over lines. */
export function Label({ x, y, ends, room, text, bold }: LabelProps) {
  const { left, right, letter } = room;
  const each = letter * (bold ? wide.bold : wide.plain);
  const most = Math.max(8, Math.floor((right - left) / each));
  const lines = inLines(text, most);
  const width = Math.max(...lines.map(({ length }) => length)) * each;
  const begins = Math.max(left, Math.min(right - width, ends ? x - width : x));
  const at = ends ? begins + width : begins;
  return (
    <text x={at} y={y} font-size={letter} text-anchor={ends ? 'end' : 'start'}>
      {lines.length === 1
        ? text
        : lines.map((line, i) => (
            <tspan key={line} x={at} dy={i === 0 ? -1.15 * letter * (lines.length - 1) : 1.15 * letter}>
              {line}
            </tspan>
          ))}
    </text>
  );
}

/** Words in lines of at most so many letters, where no word alone is longer. */
export function inLines(text: string, most: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
