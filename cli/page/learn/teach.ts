import type { LearnAction } from './learn-state.ts';

/** Where the parts of a lesson say what she does. */
export type Teach = (action: LearnAction) => void;
