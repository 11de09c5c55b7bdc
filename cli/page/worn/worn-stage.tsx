import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Reading } from './reading.tsx';
import type { SceneReading, WornScene } from './scene.ts';
import { type Shown, type ShownScene, showWorn, wordsId } from './show-worn.ts';
import { StageChoices } from './stage-choices.tsx';
import { keyed, StageButtons, taps } from './stage-ways.tsx';

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
      <StageButtons table={stage?.turntable} />
      <Reading reading={reading} reader={scene.reader} />
      <StageChoices scene={scene} shown={shown} change={setShown} />
    </div>
  );
}
