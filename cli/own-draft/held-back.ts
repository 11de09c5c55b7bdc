import { DraftMistake } from '../../engine/draft-mistake.ts';

/** What a draft prints while it is tried out stands beside the results, never among them. */
const printing = ['log', 'info', 'debug', 'table', 'dir'] as const;

/**
 * Keeps the code of a draft from ending the program, which would then seem to have found everything true, and from printing among
 * its results, until the function that it gives is called.
 */
export function heldBack(): () => void {
  const { exit } = process;
  const before = printing.map((name) => [name, console[name]] as const);
  process.exit = () => {
    throw new DraftMistake(
      'The draft calls process.exit, which would end the program: return, or throw new Error(…), instead.',
      ['exit'],
    );
  };
  for (const name of printing) console[name] = console.error;
  return () => {
    process.exit = exit;
    for (const [name, print] of before) console[name] = print;
  };
}
