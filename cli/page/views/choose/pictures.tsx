import { useEffect, useRef } from 'preact/hooks';
import type { ChoicePicture } from '../../requests/pictures.ts';
import { askedDraft, garmentNow } from '../../state.ts';
import type { FileViewProps } from '../view.ts';

/** So long nothing must have been chosen before pictures are drawn, ms. */
const pause = 400;

/**
 * Has pictures of all words drawn, again whenever her measurements, the garment or a word has changed: what a slider changes is
 * seen on the drawing.
 */
export function usePictures({ state, ask }: FileViewProps): void {
  const { of: come, done } = state.own.choose;
  const asked = useRef<string | undefined>(come);
  const wanted = askedDraft(state);
  const words = garmentNow(state)
    ?.choices.filter(({ kind }) => kind === 'word')
    .map(({ name }) => wanted.choices[name] ?? '');
  const of = words && JSON.stringify([wanted.body, wanted.garment, wanted.code, words]);
  const busy = asked.current !== come || !done;
  useEffect(() => {
    if (busy || of === undefined || asked.current === of) return;
    const begin = setTimeout(() => {
      asked.current = of;
      ask({ kind: 'pictures', ...wanted, of });
    }, pause);
    return () => clearTimeout(begin);
  }, [of, busy]);
}

/** What a word looks like. All of one choice are drawn to one scale, that of the largest. */
export const Picture = ({
  picture,
  scale,
}: {
  readonly picture: ChoicePicture;
  /** mm that the picture is wide and high. */
  readonly scale: number;
}) => (
  <svg
    class="choice-picture"
    aria-hidden="true"
    viewBox={[(picture.width - scale) / 2, (picture.height - scale) / 2, scale, scale]
      .map(Math.round)
      .join(' ')}
  >
    {picture.lines.map(({ d, x, y }, i) => (
      <path key={i} d={d} transform={`translate(${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10})`} />
    ))}
  </svg>
);

export const scaleOf = (pictures: Readonly<Record<string, ChoicePicture>>): number =>
  1.04 * Math.max(1, ...Object.values(pictures).flatMap(({ width, height }) => [width, height]));
