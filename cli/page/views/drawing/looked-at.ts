/** What is seen of a drawing: how much it is enlarged, and which of its places, in shares of its size, is in the middle. */
export interface LookedAt {
  readonly zoom: number;
  readonly x: number;
  readonly y: number;
}

export const whole: LookedAt = { zoom: 1, x: 0.5, y: 0.5 };

/** How far a drawing can be enlarged. */
export const largestZoom = 32;

/** Looks from where some of the drawing can be seen, and no closer than is of use. */
export function within({ zoom, x, y }: LookedAt): LookedAt {
  const near = Math.min(largestZoom, Math.max(1, zoom));
  const half = 0.5 / near;
  const place = (share: number): number => Math.min(1 - half, Math.max(half, share));
  return { zoom: near, x: place(x), y: place(y) };
}

/** Larger by so much, with the place at `x` and `y` (shares of what is seen now) staying where it is. */
export function enlarged(look: LookedAt, by: number, x = 0.5, y = 0.5): LookedAt {
  const zoom = Math.min(largestZoom, Math.max(1, look.zoom * by));
  const at = (middle: number, share: number): number =>
    middle + (share - 0.5) / look.zoom - (share - 0.5) / zoom;
  return within({ zoom, x: at(look.x, x), y: at(look.y, y) });
}

/** Moved by shares of what is seen. */
export const movedBy = (look: LookedAt, x: number, y: number): LookedAt =>
  within({ ...look, x: look.x + x / look.zoom, y: look.y + y / look.zoom });

/** The part of a drawing that is seen, as an SVG has it. */
export const viewBox = ({ zoom, x, y }: LookedAt, width: number, height: number): string =>
  [(x - 0.5 / zoom) * width, (y - 0.5 / zoom) * height, width / zoom, height / zoom]
    .map((n) => Math.round(n * 100) / 100)
    .join(' ');
