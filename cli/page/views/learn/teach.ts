import type { Learning } from './own.ts';

/** Where the parts of a lesson say what she does. */
export type Teach = (what: Learning) => void;
