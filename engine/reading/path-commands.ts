/** One command of a path with its numbers. */
export interface Command {
  readonly letter: string;
  readonly numbers: readonly number[];
}

/** How many numbers each path command takes (SVG 2, section 9.3). */
const arity: Readonly<Record<string, number>> = {
  M: 2,
  L: 2,
  H: 1,
  V: 1,
  C: 6,
  S: 4,
  Q: 4,
  T: 2,
  A: 7,
  Z: 0,
};

/** The two flags of an arc, which may stand without a gap before what follows. */
const isFlag = (letter: string, count: number): boolean =>
  letter.toUpperCase() === 'A' && (count % 7 === 3 || count % 7 === 4);

const token = /([A-Za-z])|([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)|([\s,]+)|([\s\S])/y;
const flag = /[01]/y;

/**
 * The commands of a path's `d` attribute, repeated numbers split into repeated commands; a reason when it cannot
 * be read or holds more than `most` numbers.
 */
export function splitCommands(d: string, most: number): Command[] | string {
  const read: { letter: string; numbers: number[] }[] = [];
  let count = 0;
  let at = 0;
  while (at < d.length) {
    const last = read.at(-1);
    const bare = last && isFlag(last.letter, last.numbers.length) ? matchAt(flag, d, at) : undefined;
    const found = bare ?? matchAt(token, d, at);
    if (!found) break;
    at += found[0].length;
    const [text, letter, number, , other] = found;
    if (other !== undefined) return `it holds “${other}”`;
    if (letter !== undefined) {
      if (arity[letter.toUpperCase()] === undefined) return `it holds the command “${letter}”`;
      read.push({ letter, numbers: [] });
    } else if (bare || number !== undefined) {
      const value = Number(text);
      if (!Number.isFinite(value) || Math.abs(value) > 1e6)
        return `the number ${text.slice(0, 20)} is too large`;
      last?.numbers.push(value);
      if (++count > most) return 'it is too long';
    }
  }
  const commands: Command[] = [];
  for (const { letter, numbers } of read) {
    const size = arity[letter.toUpperCase()] ?? 0;
    const whole = size === 0 ? numbers.length === 0 : numbers.length > 0 && numbers.length % size === 0;
    if (!whole) return `“${letter}” is followed by ${numbers.length} numbers`;
    if (size === 0) commands.push({ letter, numbers });
    for (let i = 0; size > 0 && i < numbers.length; i += size)
      commands.push({ letter: i === 0 ? letter : afterFirst(letter), numbers: numbers.slice(i, i + size) });
  }
  return commands;
}

/** Further numbers after a move are lines. */
const afterFirst = (letter: string): string => (letter === 'M' ? 'L' : letter === 'm' ? 'l' : letter);

function matchAt(pattern: RegExp, text: string, at: number): RegExpExecArray | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text) ?? undefined;
}
