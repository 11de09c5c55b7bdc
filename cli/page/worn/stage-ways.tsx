import { type NamedView, namedViews, type Turntable } from './turntable.ts';

/** One press of a key or button turns by so much, radians; moves by so much of the picture; enlarges so many times. */
const [TURN, MOVE, LARGER] = [Math.PI / 12, 0.05, 1.25];

/** A finger that moved less than this was a tap, pixels. */
const STILL = 5;

const titles: Readonly<Record<NamedView, string>> = {
  front: 'Front',
  'three-quarter': 'Three-quarter',
  side: 'Side',
  back: 'Back',
};

/** What a key does; nothing where it is left to the browser. */
export function keyed(
  { key, shiftKey, ctrlKey, altKey, metaKey }: KeyboardEvent,
  table: Turntable,
  read: () => void,
): (() => void) | undefined {
  if (ctrlKey || altKey || metaKey) return undefined;
  const views = Object.keys(namedViews) as readonly NamedView[];
  const view = views[Number(key) - 1];
  if (view) return () => table.look(view);
  const turned = (round: number, up: number) => () =>
    shiftKey ? table.move(MOVE * round, -MOVE * up) : table.turn(TURN * round, TURN * up);
  const keys: Readonly<Record<string, () => void>> = {
    ArrowLeft: turned(-1, 0),
    ArrowRight: turned(1, 0),
    ArrowUp: turned(0, 1),
    ArrowDown: turned(0, -1),
    '+': () => table.zoom(LARGER),
    '=': () => table.zoom(LARGER),
    '-': () => table.zoom(1 / LARGER),
    Enter: read,
    ' ': read,
  };
  return keys[key];
}

/** Reads the place where a finger or the mouse came down and went up again without having moved. */
export const taps =
  (read: (x: number, y: number) => void) =>
  (down: PointerEvent): void => {
    const pane = down.currentTarget as HTMLElement;
    const up = (event: PointerEvent): void => {
      const moved = Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY);
      if (event.pointerId !== down.pointerId || moved > STILL) return;
      const { left, top, width, height } = pane.getBoundingClientRect();
      read((2 * (event.clientX - left)) / width - 1, 1 - (2 * (event.clientY - top)) / height);
    };
    pane.addEventListener('pointerup', up, { once: true });
  };

/** The same for whoever has neither keys nor a mouse to drag with. */
export function StageButtons({ table }: { readonly table: Turntable | undefined }) {
  const button = (name: string, press: ((turned: Turntable) => void) | undefined) => (
    <button type="button" disabled={!table} onClick={() => table && press?.(table)}>
      {name}
    </button>
  );
  return (
    <div class="worn-buttons">
      {(Object.keys(namedViews) as readonly NamedView[]).map((view) =>
        button(titles[view], (turned) => turned.look(view)),
      )}
      {button('Turn left', (turned) => turned.turn(-TURN, 0))}
      {button('Turn right', (turned) => turned.turn(TURN, 0))}
      {button('Nearer', (turned) => turned.zoom(LARGER))}
      {button('Farther', (turned) => turned.zoom(1 / LARGER))}
    </div>
  );
}
