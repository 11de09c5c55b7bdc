import type { Place } from '../../form/form.ts';

export const viewNames = ['front', 'side', 'back'] as const;

/** The same, and half-way between the front and the side, as clothes are shown. */
export const wornViewNames = [...viewNames, 'three-quarter'] as const;

/** From where a form is looked at; the side is the wearer's left. */
export type ViewName = (typeof wornViewNames)[number];

/** A place as it is seen: to the right, up, and toward whoever looks; mm. */
export type Seen = readonly [right: number, up: number, near: number];

/** How far a view half-way is turned from the front to the wearer's left. */
const HALF_WAY = (40 * Math.PI) / 180;

/** A parallel view, so that lengths across the line of sight can be measured on the picture. */
export const seenFrom = (view: ViewName, [x, y, z]: Place): Seen => {
  switch (view) {
    case 'front':
      return [x, y, z];
    case 'side':
      return [-z, y, x];
    case 'back':
      return [-x, y, -z];
    case 'three-quarter':
      return [
        Math.cos(HALF_WAY) * x - Math.sin(HALF_WAY) * z,
        y,
        Math.cos(HALF_WAY) * z + Math.sin(HALF_WAY) * x,
      ];
  }
};
