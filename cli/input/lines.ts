/** One line of a file; no text when it was longer than allowed. */
export interface FileLine {
  readonly number: number;
  readonly text: string | undefined;
  /** Bytes read up to the end of this line. */
  readonly end: number;
}

const lineEnd = 0x0a;

/**
 * The lines of a file as they come in. Never holds more than one line of at most `longest` bytes and one part of
 * the file, however long the file or its lines are.
 */
export async function* lines(parts: AsyncIterable<Buffer>, longest: number): AsyncGenerator<FileLine> {
  let held: Buffer[] = [];
  let size = 0;
  let number = 0;
  let end = 0;
  const keep = (part: Buffer): void => {
    size += part.length;
    end += part.length;
    if (size <= longest) held.push(part);
    else held = [];
  };
  const take = (): FileLine => {
    const text = size <= longest ? Buffer.concat(held).toString('utf8') : undefined;
    held = [];
    size = 0;
    number += 1;
    return { number, text, end };
  };
  for await (const part of parts) {
    let from = 0;
    for (let at = part.indexOf(lineEnd); at >= 0; at = part.indexOf(lineEnd, from)) {
      keep(part.subarray(from, at));
      end += 1;
      from = at + 1;
      yield take();
    }
    keep(part.subarray(from));
  }
  if (size > 0) yield take();
}
