import { viewNames } from '../../engine/render/form/view.ts';
import type { ShownWorn } from '../../engine/wear/shown/shown-worn.ts';
import { wornPicture } from '../../engine/wear/shown/worn-picture.ts';

/** A worn garment in black line, as it is seen from one side. */
export interface WornSide {
  readonly view: (typeof viewNames)[number];
  readonly svg: string;
}

/** A worn garment in black line from the front, the side and the back: for where nothing can be shown in space. */
export const wornSides = (shown: ShownWorn, title: string): readonly WornSide[] =>
  viewNames.map((view) => ({ view, svg: wornPicture(shown, view, title, 'lines') }));
