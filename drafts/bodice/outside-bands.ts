import type { Style } from './style.ts';

/** Why a figure usually lies outside its band. */
export const thisBody = 'this body differs from the regular adult that the band is for';

/** Why a figure of the armhole does. */
export const armholeOutside = ({ shoulder }: Style): string =>
  shoulder === 'strap'
    ? 'the armhole runs along a strap, which lies nearer to the neck than the shoulder point of a plain bodice'
    : thisBody;
