import type { Place } from '../../form/form.ts';

export const viewNames = ['front', 'side', 'back'] as const;

/** From where a form is looked at; the side is the wearer's left. */
export type ViewName = (typeof viewNames)[number];

/** A place as it is seen: to the right, up, and toward whoever looks; mm. */
export type Seen = readonly [right: number, up: number, near: number];

/** A parallel view, so that lengths across the line of sight can be measured on the picture. */
export const seenFrom = (view: ViewName, [x, y, z]: Place): Seen => {
  switch (view) {
    case 'front':
      return [x, y, z];
    case 'side':
      return [-z, y, x];
    case 'back':
      return [-x, y, -z];
  }
};
