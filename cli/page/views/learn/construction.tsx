import { useLayoutEffect, useState } from 'preact/hooks';
import type { TaughtDimension } from './dimension.ts';
import { Label } from './label.tsx';
import type { Lesson, TaughtDrawing } from './lesson.ts';
import { Measured } from './measured.tsx';

export interface ConstructionProps {
  readonly lesson: Lesson;
  /** The lesson whose lines lie under it in grey. */
  readonly under?: Lesson | undefined;
  /** Which of its drawings. */
  readonly on: string;
  /** The drawing as it stands after this step. */
  readonly step: number;
  /** Steps whose lines are lit, be they yet to come. */
  readonly lit?: ReadonlySet<number>;
  readonly dimension?: TaughtDimension | undefined;
  readonly amount?: string | undefined;
  readonly goTo?: (step: number) => void;
}

/** Names of points, and room for them round the drawing, in shares of the page's letters. */
const [nameSize, roomSize] = [0.8125, 1.625];

/** About as large are a drawing and the page's letters before their size on the screen is known, px. */
const usualSize = { width: 480, height: 480, letter: 16 };

/** A drawing of a lesson as it stands after a step: what that adds heavy and named, what stood before it light. */
export function Construction(props: ConstructionProps) {
  const { lesson, under, on, step, lit, dimension, amount, goTo } = props;
  const [svg, setSvg] = useState<SVGSVGElement | null>(null);
  const { width, height, letter } = useSize(svg);
  const [letters, room] = [nameSize * letter, roomSize * letter];
  const all = partsOn(lesson, on);
  const standing = all.filter(({ number }) => number <= step || lit?.has(number));
  const box = extentOf([lesson, under].flatMap((each) => (each ? partsOn(each, on) : [])));
  const mm = Math.max(
    box.width / Math.max(120, width - 2 * room),
    box.height / Math.max(120, height - 2 * room),
  );
  const margin = room * mm;
  const middle = box.x + box.width / 2;
  // The drawing lies in the middle of what is seen of it, which may be wider.
  const half = Math.max((width * mm) / 2, box.width / 2 + margin) - 4 * mm;
  const labelRoom = { left: middle - half, right: middle + half, letter: letters * mm };
  const shown = dimension?.on === on ? dimension : undefined;
  const added = standing.find(({ number }) => number === step)?.drawing;
  return (
    <svg
      ref={setSvg}
      class="construction"
      role="img"
      aria-label={described(on, step, standing.length, added)}
      viewBox={`${box.x - margin} ${box.y - margin} ${box.width + 2 * margin} ${box.height + 2 * margin}`}
    >
      <g class="axes">
        <line x1={box.x - width * mm} x2={box.x + width * mm} y1={0} y2={0} />
        <line x1={0} x2={0} y1={box.y - height * mm} y2={box.y + height * mm} />
      </g>
      <g class="to-come">
        {all
          .filter(({ number }) => number > step)
          .flatMap(({ drawing }) => drawing.lines)
          .map(({ name, d }, i) => (
            <path key={`${name} ${i}`} d={d} />
          ))}
      </g>
      {under && (
        <g class="under">
          {partsOn(under, on)
            .filter(({ number }) => number <= step)
            .flatMap(({ drawing }) => drawing.lines)
            .map(({ name, d }, i) => (
              <path key={`${name} ${i}`} d={d} />
            ))}
        </g>
      )}
      {standing.map(({ number, drawing }) => (
        // biome-ignore lint/a11y/noStaticElementInteractions: a short way by mouse; the list of steps is the same for the keyboard.
        <g
          key={number}
          class={number === step ? 'added' : lit?.has(number) ? 'lit' : 'stood'}
          onClick={() => goTo?.(number)}
        >
          {drawing.lines.map(({ name, d }, i) => (
            <g key={`${name} ${i}`}>
              <path class="touch" d={d} />
              <path d={d} />
            </g>
          ))}
          {drawing.points.map(({ name, x, y }, i) => (
            <g key={`${name} ${i}`}>
              <path d={`M${x - 4 * mm} ${y}h${8 * mm}M${x} ${y - 4 * mm}v${8 * mm}`} />
              {(number === step || lit?.has(number)) && (
                <Label
                  x={x + 6 * mm * (x > middle ? -1 : 1)}
                  y={y - 5 * mm}
                  ends={x > middle}
                  room={labelRoom}
                  text={name}
                />
              )}
            </g>
          ))}
        </g>
      ))}
      {shown && (
        <Measured dimension={shown} mm={mm} labelRoom={labelRoom} middle={middle} amount={amount ?? ''} />
      )}
    </svg>
  );
}

interface StepPart {
  readonly number: number;
  readonly drawing: TaughtDrawing;
}

const partsOn = ({ steps }: Lesson, on: string): readonly StepPart[] =>
  steps.flatMap(({ number, draws }) =>
    draws.filter((drawing) => drawing.on === on).map((drawing) => ({ number, drawing })),
  );

/** What drawings take up, with the place where their lines cross, mm. */
function extentOf(parts: readonly StepPart[]): { x: number; y: number; width: number; height: number } {
  const places = parts.flatMap(({ drawing: { lines, points } }) => [
    ...lines.flatMap(({ reach }) => reach),
    ...points.map(({ x, y }) => [x, y] as const),
  ]);
  const [xs, ys] = [
    [0, ...places.map(([x]) => x)],
    [0, ...places.map(([, y]) => y)],
  ];
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(1, Math.max(...xs) - x), height: Math.max(1, Math.max(...ys) - y) };
}

function described(on: string, step: number, count: number, added: TaughtDrawing | undefined): string {
  const named = [...(added?.points ?? []), ...(added?.lines ?? [])].map(({ name }) => name);
  const fresh = named.length > 0 ? `New: ${[...new Set(named)].join(', ')}.` : 'Nothing on it is new.';
  return `The ${on} after step ${step}, drawn in ${count === 1 ? 'one step' : `${count} steps`}. ${fresh}`;
}

/** How large a drawing and the page's letters are on the screen, px: those of the drawing stay as large as any. */
function useSize(svg: SVGSVGElement | null): typeof usualSize {
  const [size, setSize] = useState(usualSize);
  useLayoutEffect(() => {
    if (!svg) return;
    const measure = (): void => {
      const { clientWidth: width, clientHeight: height } = svg;
      const letter = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
      if (width > 0 && height > 0) setSize({ width, height, letter });
    };
    measure();
    const watching = new ResizeObserver(measure);
    watching.observe(svg);
    return () => watching.disconnect();
  }, [svg]);
  return size;
}
