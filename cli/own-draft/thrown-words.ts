/** What went wrong, where the words of the language say it only to who programs; the names that stood in them are put in. */
const plain: readonly (readonly [RegExp, (...names: readonly string[]) => string])[] = [
  [/^Maximum call stack size exceeded/, () => 'A function calls itself without end.'],
  [
    /^Cannot read properties of (undefined|null) \(reading '(.+)'\)/,
    (nothing, name) => `“${name}” is asked of something that is nothing here (${nothing}). ${LOOK}`,
  ],
  [
    /^Cannot destructure property '(.+?)' of '(.*?)' as it is (undefined|null)/,
    (name, _, nothing) => `“${name}” is asked of something that is nothing here (${nothing}). ${LOOK}`,
  ],
  [/^(\S+) is not a function/, (name) => `“${name}” is no function here. ${LOOK}`],
  [/^(\S+) is not defined/, (name) => `“${name}” is neither made nor imported: is it misspelt?`],
  [
    /^Cannot assign to read only property '(.+?)' of object/,
    (name) => `“${name}” is handed to the draft to be read, and cannot be set.`,
  ],
];

const LOOK =
  'Is a name misspelt, a “return” or an “await” forgotten, or something of another kind than is expected?';

/** What something that a draft threw says, in words for its writer; `text` is what it says of itself. */
export function thrownWords(thrown: unknown, text: string): string {
  // An error of another realm is none of this one's.
  if (Object.prototype.toString.call(thrown) !== '[object Error]' && !(thrown instanceof Error))
    return `The draft throws ${notAnError(thrown)}. Write throw new Error('…'), and its line is told.`;
  for (const [pattern, words] of plain) {
    const found = pattern.exec(text);
    if (found) return words(...found.slice(1));
  }
  return text;
}

const notAnError = (thrown: unknown): string =>
  typeof thrown === 'string'
    ? `“${thrown}”, a text`
    : `what is no Error (${thrown === null ? 'null' : typeof thrown})`;
