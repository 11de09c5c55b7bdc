import { type Bounds, boundingBox } from '../../geometry/bounds.ts';
import { point } from '../../geometry/point.ts';
import type { Step, StepDrawing } from '../../pattern/garment.ts';

/** One drawing of a lesson as it stands after a step: what that adds, and what stood before. */
export interface Drawing {
  readonly on: string;
  /** One mm of the picture is so many mm of the body. */
  readonly scale: number;
  /** Where the middle of the finished drawing lies across, mm. */
  readonly middle: number;
  readonly added: StepDrawing;
  readonly before: StepDrawing;
}

/** The room that the finished drawing has within the white round it, mm. */
const room = { width: 68, height: 96 };

/** Scales that a ruler or a quick reckoning has. */
const scales = [1, 2, 2.5, 4, 5, 8, 10, 15, 20, 40];

/** The drawings of a construction as they grow, each at one scale throughout. */
export class Drawings {
  readonly #frames = new Map<string, Pick<Drawing, 'scale' | 'middle'>>();
  readonly #standing = new Map<string, StepDrawing>();

  /** For a construction of these steps; ask for them in their order. */
  constructor(steps: readonly Step[]) {
    for (const on of new Set(steps.flatMap(drawingsOf))) {
      const all = together(steps.map(({ draws }) => partOn(draws, on)));
      const { left, right, top, bottom } = extent(all);
      const needed = Math.max((right - left) / room.width, (bottom - top) / room.height);
      const scale = scales.find((each) => each >= needed) ?? Math.ceil(needed);
      this.#frames.set(on, { scale, middle: (left + right) / 2 });
    }
  }

  /** The drawings that a step adds to, as they stand after it. */
  after(step: Step): readonly Drawing[] {
    return drawingsOf(step).map((on) => {
      const added = partOn(step.draws, on);
      const before = this.#standing.get(on) ?? nothing;
      this.#standing.set(on, together([before, added]));
      return { on, ...(this.#frames.get(on) ?? { scale: 1, middle: 0 }), added, before };
    });
  }
}

/** What a drawing takes up, with the place where its lines cross, mm. */
export const extent = ({ points, lines }: StepDrawing): Bounds =>
  boundingBox([
    ...lines.flatMap(({ curves }) => curves),
    ...[point(0, 0), ...points.map(({ at }) => at)].map((at) => ({
      kind: 'line' as const,
      from: at,
      to: at,
    })),
  ]);

const nothing: StepDrawing = { points: [], lines: [] };

const drawingsOf = ({ draws }: Step): readonly string[] => [
  ...new Set([...(draws?.points ?? []), ...(draws?.lines ?? [])].map(({ on }) => on)),
];

const partOn = (draws: StepDrawing | undefined, on: string): StepDrawing => ({
  points: (draws?.points ?? []).filter((each) => each.on === on),
  lines: (draws?.lines ?? []).filter((each) => each.on === on),
});

const together = (parts: readonly StepDrawing[]): StepDrawing => ({
  points: parts.flatMap(({ points }) => points),
  lines: parts.flatMap(({ lines }) => lines),
});
