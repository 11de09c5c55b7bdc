import type { Session } from '../session.ts';

/** A bar on a terminal, for work of more than a second. */
export interface Progress {
  /** The share of the work that is done, 0 to 1. */
  readonly reached: (share: number) => void;
  /** Takes the bar away. */
  readonly done: () => void;
}

/** Milliseconds before a bar appears, and between two drawings of it. */
const patience = 1000;
const pause = 100;
const width = 40;

/** A bar for one stretch of work. It is never drawn when nobody is looking. */
export function progress(session: Session, label: string): Progress {
  const start = session.clock();
  let next = start + patience;
  let drawn = false;
  return {
    reached: (share) => {
      const now = session.clock();
      if (!session.live || now < next) return;
      next = now + pause;
      drawn = true;
      const full = Math.round(Math.min(1, Math.max(0, share)) * width);
      const percent = `${Math.floor(share * 100)}`.padStart(3);
      session.tell(`\r${label} [${'#'.repeat(full)}${' '.repeat(width - full)}] ${percent} %`);
    },
    done: () => {
      if (drawn) session.tell(`\r${' '.repeat(label.length + width + 9)}\r`);
    },
  };
}
