import type { Session } from '../session.ts';
import { plain } from './plain.ts';
import { wrapped } from './wrap.ts';

/** Prints words or tables as a result, safe to show and no wider than the terminal; `hang` as of `wrapped`. */
export const say = (session: Session, text: string, hang?: number): Promise<void> =>
  session.write(wrapped(plain(text), session.columns, hang));

/** Tells the reader something beside the results, safe to show and no wider than the terminal. */
export const tell = (session: Session, text: string, hang?: number): void =>
  session.tell(wrapped(plain(text), session.columns, hang));
