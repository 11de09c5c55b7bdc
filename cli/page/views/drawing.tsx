import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { isUntouched } from '../state.ts';
import { AllSaid } from './said.tsx';
import type { ViewProps } from './view.ts';

/** So many things that stand in the way are told over the drawing. */
const most = 5;

/** By so much each press, and each notch of the wheel, enlarges. */
const step = 1.3;

/**
 * The sheet, or the piece that is shown alone, on its paper; moved by the bars, the arrow keys, a finger or the mouse, made
 * larger by buttons, by + and -, or by the wheel with Ctrl held. Where the newest draft could not be drawn the last stays,
 * under what stands in the way.
 */
export function Drawing({ state, send }: ViewProps) {
  const { made, answer } = state;
  const { zoom, piece } = state.own.pieces;
  const shown = made?.parts.files?.find(({ name }) => name === piece) ?? made?.files[0];
  const url = useUrl(shown?.text);
  const pane = useRef<HTMLElement>(null);
  const held = useHeldPlace(pane.current, zoom);
  if (!made || !shown)
    return (
      <p class="empty">
        {isUntouched(state)
          ? 'The pieces are drawn here as soon as bust, waist and hip girth and the back neck point to waist are known.'
          : 'Nothing could be drawn yet.'}
      </p>
    );
  const enlarge = (to: number): void =>
    send({ does: 'within', view: 'pieces', what: { does: 'zoom', zoom: to } });
  const larger = (): void => enlarge(zoom * step);
  const smaller = (): void => enlarge(zoom / step);
  const whole = (): void => enlarge(1);
  const keys: Readonly<Record<string, () => void>> = { '+': larger, '=': larger, '-': smaller, '0': whole };
  const errors = answer?.made ? [] : (answer?.issues.filter(({ severity }) => severity === 'error') ?? []);
  const what = shown.name === 'sheet.svg' ? `${made.pieces.length} pieces on one sheet` : shown.name;
  return (
    <div class="drawing">
      {errors.length > 0 && (
        <div class="hinders">
          <p>
            This is the last that could be drawn.
            {state.view === 'pieces' ? ' What stands in the way of the next:' : ''}
          </p>
          {/* Beside a form it stands in the form. */}
          {state.view === 'pieces' && <AllSaid issues={errors.slice(0, most)} />}
        </div>
      )}
      <p class="on-paper">Not to scale: what is to be cut is printed from the files under Take.</p>
      <div class="tools">
        <button type="button" onClick={larger}>
          Larger
        </button>
        <button type="button" onClick={smaller} disabled={zoom === 1}>
          Smaller
        </button>
        <button type="button" onClick={whole} disabled={zoom === 1}>
          Whole
        </button>
      </div>
      <section
        class="pane"
        aria-label="Drawing: arrow keys move it, + and - change its size"
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard (WCAG 2.1.1).
        tabIndex={0}
        ref={pane}
        onKeyDown={(event) => {
          const act = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key];
          if (!act) return;
          event.preventDefault();
          act();
        }}
        onWheel={(event) => {
          if (!event.ctrlKey && !event.metaKey) return;
          event.preventDefault();
          held.at(event);
          if (event.deltaY < 0) larger();
          else smaller();
        }}
        onPointerMove={(event) => {
          if (event.pointerType !== 'mouse' || event.buttons !== 1) return;
          event.currentTarget.scrollLeft -= event.movementX;
          event.currentTarget.scrollTop -= event.movementY;
        }}
      >
        {url && (
          <img
            src={url}
            style={{ width: `${zoom * 100}%`, height: `${zoom * 100}%` }}
            draggable={false}
            alt={`${made.title}, for ${made.body}: ${what}. The pieces are listed under Pieces.`}
          />
        )}
      </section>
    </div>
  );
}

/** The address of a drawing for as long as it is shown. */
function useUrl(svg: string | undefined): string | undefined {
  const [url, setUrl] = useState<string>();
  useEffect(() => {
    if (svg === undefined) return setUrl(undefined);
    const made = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml' }));
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [svg]);
  return url;
}

/** Keeps the place under the pointer, or else the middle, where it is while the drawing changes its size. */
function useHeldPlace(pane: HTMLElement | null, zoom: number): { readonly at: (event: MouseEvent) => void } {
  const before = useRef(zoom);
  const place = useRef<{ readonly x: number; readonly y: number } | undefined>(undefined);
  useLayoutEffect(() => {
    const ratio = zoom / before.current;
    before.current = zoom;
    if (!pane || ratio === 1) return;
    const { x, y } = place.current ?? { x: pane.clientWidth / 2, y: pane.clientHeight / 2 };
    pane.scrollLeft = (pane.scrollLeft + x) * ratio - x;
    pane.scrollTop = (pane.scrollTop + y) * ratio - y;
    place.current = undefined;
  }, [zoom, pane]);
  return {
    at: ({ clientX, clientY }) => {
      const box = pane?.getBoundingClientRect();
      if (box) place.current = { x: clientX - box.left, y: clientY - box.top };
    },
  };
}
