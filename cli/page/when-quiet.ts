/** Something to be done once it is quiet. */
export interface Quiet {
  /** To be told whatever happens. */
  readonly stir: () => void;
}

/** So long nothing must have happened, ms. */
const quiet = 700;

/** Does something once nothing has happened for a while and no pointer is held down; not again before something does. */
export function whenQuiet(act: () => 'done' | 'wait on'): Quiet {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let held = false;
  const stir = (): void => {
    clearTimeout(waiting);
    waiting = setTimeout(() => {
      if (held || act() === 'wait on') stir();
    }, quiet);
  };
  addEventListener('pointerdown', () => {
    held = true;
  });
  for (const end of ['pointerup', 'pointercancel', 'blur'])
    addEventListener(end, () => {
      held = false;
    });
  return { stir };
}
