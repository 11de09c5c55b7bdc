import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { enlarged, type LookedAt, movedBy, viewBox, whole } from './looked-at.ts';

interface PaneProps {
  readonly look: LookedAt;
  readonly onLook: (look: LookedAt) => void;
  /** The place of the drawing, mm. */
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  /** What the drawing shows, in words. */
  readonly says: string;
  /** What it is called among other drawings of its view. */
  readonly called?: string;
  /** Whether pieces are on it, each a picture with words of its own, or it is a picture by itself. */
  readonly holds: 'pieces' | 'one picture';
  /** Whether it is as high as its drawing is to its width, and no higher. */
  readonly fitted?: boolean;
  /** Whether the wheel enlarges by itself; else only with Ctrl held, so that the page still scrolls. */
  readonly wheel?: boolean;
  readonly children: ComponentChildren;
}

/** By so much each press, and each notch of the wheel, enlarges. */
const step = 1.3;

/** By such a share of what is seen an arrow key moves it. */
const stride = 0.15;

/**
 * A drawing on its paper: enlarged by buttons, + and -, the wheel or two fingers, and moved by arrow keys, the mouse or
 * a finger.
 */
export function Pane({ look, onLook, box, says, called, holds, fitted, wheel, children }: PaneProps) {
  const svg = useRef<SVGSVGElement>(null);
  const pane = useRef<HTMLElement>(null);
  const now = useRef(look);
  now.current = look;
  const move = (next: LookedAt): void => {
    now.current = next;
    onLook(next);
  };
  const keys: Readonly<Record<string, (look: LookedAt) => LookedAt>> = {
    '+': (at) => enlarged(at, step),
    '=': (at) => enlarged(at, step),
    '-': (at) => enlarged(at, 1 / step),
    '0': () => whole,
    ArrowLeft: (at) => movedBy(at, -stride, 0),
    ArrowRight: (at) => movedBy(at, stride, 0),
    ArrowUp: (at) => movedBy(at, 0, -stride),
    ArrowDown: (at) => movedBy(at, 0, stride),
  };
  const wheeling = useRef((_: WheelEvent): void => {});
  wheeling.current = (event) => {
    if (!wheel && !event.ctrlKey && !event.metaKey) return;
    if (!event.ctrlKey && look.zoom === 1 && event.deltaY > 0) return;
    event.preventDefault();
    const at = shareOf(event);
    move(enlarged(now.current, event.deltaY < 0 ? step : 1 / step, at.x, at.y));
  };
  useEffect(() => {
    const turn = (event: WheelEvent): void => wheeling.current(event);
    // Listened to here, for a wheel that only scrolls is never waited for.
    pane.current?.addEventListener('wheel', turn, { passive: false });
    return () => pane.current?.removeEventListener('wheel', turn);
  }, []);
  /** Where in what is seen something is, in shares of it. */
  const shareOf = (at: { readonly clientX: number; readonly clientY: number }) => {
    const around = svg.current?.getScreenCTM();
    if (!around) return { x: 0.5, y: 0.5 };
    const [seenX, seenY, width = 1, height = 1] = viewBox(now.current, box.width, box.height)
      .split(' ')
      .map(Number);
    const x = (at.clientX - around.e) / around.a - box.x - (seenX ?? 0);
    const y = (at.clientY - around.f) / around.d - box.y - (seenY ?? 0);
    return { x: x / width, y: y / height };
  };
  const fingers = useRef(new Map<number, { readonly clientX: number; readonly clientY: number }>());
  const drag = (event: PointerEvent): void => {
    const before = fingers.current.get(event.pointerId);
    if (!before) return;
    const old = shareOf(before);
    const at = shareOf(event);
    const others = [...fingers.current].filter(([id]) => id !== event.pointerId);
    fingers.current.set(event.pointerId, { clientX: event.clientX, clientY: event.clientY });
    const [, other] = others[0] ?? [];
    if (other) {
      const fixed = shareOf(other);
      const spread = (p: { x: number; y: number }): number => Math.hypot(p.x - fixed.x, p.y - fixed.y);
      move(enlarged(now.current, spread(at) / Math.max(0.01, spread(old)), fixed.x, fixed.y));
    } else if (now.current.zoom > 1) {
      move(movedBy(now.current, old.x - at.x, old.y - at.y));
    }
  };
  const lift = ({ pointerId }: PointerEvent): void => {
    fingers.current.delete(pointerId);
  };
  const [seen = 0, seenY = 0, ...size] = viewBox(look, box.width, box.height).split(' ').map(Number);
  const which = called && <span class="unseen">: {called}</span>;
  return (
    <>
      <p class="tools">
        <button type="button" onClick={() => move(enlarged(look, step))}>
          Larger
          {which}
        </button>
        <button type="button" disabled={look.zoom === 1} onClick={() => move(enlarged(look, 1 / step))}>
          Smaller
          {which}
        </button>
        <button type="button" disabled={look.zoom === 1} onClick={() => move(whole)}>
          Whole
          {which}
        </button>
      </p>
      <section
        class={look.zoom > 1 ? 'pane near' : 'pane'}
        style={fitted ? { aspectRatio: box.width / box.height } : undefined}
        aria-label={`${called ?? 'Drawing'}: arrow keys move it, + and - change its size`}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what moves by keys must be reached by keyboard (WCAG 2.1.1).
        tabIndex={0}
        ref={pane}
        onKeyDown={(event) => {
          const act = event.ctrlKey || event.metaKey || event.altKey ? undefined : keys[event.key];
          if (!act) return;
          event.preventDefault();
          move(act(now.current));
        }}
        onPointerDown={(event) =>
          fingers.current.set(event.pointerId, { clientX: event.clientX, clientY: event.clientY })
        }
        onPointerMove={drag}
        onPointerUp={lift}
        onPointerCancel={lift}
        onPointerLeave={lift}
      >
        <svg
          ref={svg}
          viewBox={[seen + box.x, seenY + box.y, ...size].join(' ')}
          role={holds === 'pieces' ? 'group' : 'img'}
          aria-label={says}
          focusable="false"
        >
          {children}
        </svg>
      </section>
    </>
  );
}
