import type { BackFoundation } from './back.ts';
import type { FrontFoundation } from './front.ts';
import type { Levels } from './levels.ts';
import type { Widths } from './take-in.ts';

/** The block to the waist, with neck, shoulders and armholes: every style is lines drawn on it. */
export interface Foundation {
  /** Whether sleeves are set into it: without any its underarm lies higher. */
  readonly sleeves: boolean;
  /** Whether its front armhole is held in: on straps without sleeves nothing else holds it to the body. */
  readonly held: boolean;
  readonly levels: Levels;
  readonly widths: Widths;
  readonly back: BackFoundation;
  readonly front: FrontFoundation;
  /** Room beyond the body's girths before a fitting took in or let out, mm. */
  readonly ease: { readonly bust: number; readonly underBust: number; readonly waist: number };
}
