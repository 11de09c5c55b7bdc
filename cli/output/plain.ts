import { withoutTurns } from '../../engine/text/without-turns.ts';

/**
 * Text that is safe to show on a terminal: names come from files, and a file must not move the cursor or change
 * colours, or turn the way of writing round. Control characters become spaces, line ends stay.
 */
export const plain = (text: string): string =>
  Array.from(withoutTurns(text), (c) => (c === '\n' || !isControl(c.charCodeAt(0)) ? c : ' ')).join('');

const isControl = (code: number): boolean => code < 0x20 || (code >= 0x7f && code < 0xa0);
