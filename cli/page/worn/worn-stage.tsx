import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Reading } from './reading.tsx';
import type { SceneReading, WornScene } from './scene.ts';
import { type Shown, type ShownScene, showWorn, wordsId } from './show-worn.ts';
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

const parts = [
  ['body', 'body'],
  ['arms', 'its arms'],
  ['seams', 'seams'],
  ['grain', 'grain lines'],
] as const;

const first: Shown = {
  hidden: new Set(),
  body: true,
  arms: false,
  seams: true,
  grain: false,
  map: undefined,
};

interface StageProps {
  readonly scene: WornScene;
  /** What stands there where the browser shows nothing in space. */
  readonly instead: ComponentChildren;
}

/**
 * A worn garment to be turned by hand, mouse or keys, with what is to be seen of it chosen beside it and the figures of a place
 * read off. Whoever cannot see it has the same figures in the tables beside it.
 */
export function WornStage({ scene, instead }: StageProps) {
  const host = useRef<HTMLDivElement>(null);
  const [stage, setStage] = useState<ShownScene | undefined>(undefined);
  const [failed, setFailed] = useState(false);
  const [shown, setShown] = useState(first);
  const [reading, setReading] = useState<SceneReading | 'nothing' | undefined>(undefined);
  const [mark, setMark] = useState<readonly [x: number, y: number]>([0, 0]);
  useEffect(() => {
    const pane = host.current;
    const made = pane ? showWorn(pane, scene) : undefined;
    if (!pane || !made) {
      setFailed(true);
      return;
    }
    const watch = new ResizeObserver(() => made.resize());
    watch.observe(pane);
    setStage(made);
    return () => {
      watch.disconnect();
      made.dispose();
    };
  }, [scene]);
  useEffect(() => stage?.show(shown), [stage, shown]);
  const read = (x: number, y: number): void => {
    setMark([x, y]);
    setReading(stage?.read(x, y) ?? 'nothing');
  };
  if (failed) return <>{instead}</>;
  return (
    <div class="worn-stage">
      <div class="worn-pane">
        <div
          class="worn-host"
          ref={host}
          role="application"
          // biome-ignore lint/a11y/noNoninteractiveTabindex: what is turned by keys is reached by keys.
          tabIndex={0}
          aria-label={`${scene.title}, to be turned`}
          aria-describedby={`${wordsId} worn-keys`}
          onKeyDown={(event) => {
            const press = stage && keyed(event, stage.turntable, () => read(0, 0));
            if (!press) return;
            event.preventDefault();
            press();
          }}
          onPointerDown={taps(read)}
        />
        {reading !== undefined && (
          <span
            class="worn-mark"
            aria-hidden="true"
            style={{ left: `${50 + 50 * mark[0]}%`, top: `${50 - 50 * mark[1]}%` }}
          />
        )}
      </div>
      <p id="worn-keys" class="quiet">
        Drag to turn, with two fingers or Shift to move, pinch or roll to enlarge; click or tap to read a
        place. Keys: arrows turn, with Shift they move; + and − enlarge; 1 to 4 show the front, three-quarter,
        side and back; Enter reads the place in the middle.
      </p>
      <Buttons table={stage?.turntable} />
      <Reading reading={reading} reader={scene.reader} />
      <Choices scene={scene} shown={shown} change={setShown} />
    </div>
  );
}

/** What a key does; nothing where it is left to the browser. */
function keyed(
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
const taps =
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
function Buttons({ table }: { readonly table: Turntable | undefined }) {
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

interface ChoicesProps extends Pick<StageProps, 'scene'> {
  readonly shown: Shown;
  readonly change: (shown: Shown) => void;
}

/** What of the scene is seen: colours, the body, lines, pieces. */
function Choices({ scene, shown, change }: ChoicesProps) {
  const map = scene.maps.find(({ name }) => name === shown.map);
  const toggled = (name: string): ReadonlySet<string> => {
    const hidden = new Set(shown.hidden);
    if (!hidden.delete(name)) hidden.add(name);
    return hidden;
  };
  const colour = (name: string | undefined, title: string) => (
    <label>
      <input
        type="radio"
        name="worn-map"
        checked={shown.map === name}
        onChange={() => change({ ...shown, map: name })}
      />
      {title}
    </label>
  );
  return (
    <div class="worn-choices">
      <fieldset>
        <legend>Colours</legend>
        {colour(undefined, 'Pieces, each its own')}
        {scene.maps.map(({ name, title }) => colour(name, title))}
        {map && (
          <ul class="worn-legend" aria-label={map.title}>
            {map.steps.map(({ colour: fill, says }) => (
              <li>
                <span class="worn-swatch" style={{ background: fill }} />
                {says}
              </li>
            ))}
          </ul>
        )}
      </fieldset>
      <fieldset>
        <legend>Shown</legend>
        {parts.map(([name, title]) => (
          <label>
            <input
              type="checkbox"
              checked={shown[name]}
              onChange={() => change({ ...shown, [name]: !shown[name] })}
            />
            {title}
          </label>
        ))}
      </fieldset>
      <fieldset>
        <legend>Pieces</legend>
        {scene.pieces.map(({ name, colour: fill }) => (
          <label>
            <input
              type="checkbox"
              checked={!shown.hidden.has(name)}
              onChange={() => change({ ...shown, hidden: toggled(name) })}
            />
            <span class="worn-swatch" style={{ background: fill }} />
            {name}
          </label>
        ))}
      </fieldset>
    </div>
  );
}
