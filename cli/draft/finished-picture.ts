import { notWorn } from '../../engine/wear/panel-levels.ts';
import { shownWorn } from '../../engine/wear/shown/shown-worn.ts';
import { sidesBeside } from '../../engine/wear/shown/worn-picture.ts';
import type { DraftedGarment } from '../garment/drafted-garment.ts';
import { clothCalled, usualCloth } from '../input/read-cloth.ts';
import { unusable } from '../input/unusable.ts';
import type { Session } from '../session.ts';
import { putOn } from '../wear/put-on.ts';

/** Size of triangles for a picture alone, mm. */
const COARSE = 20;

/** The finished garment in black line, front and back, worn by her whom it is drafted for, as a file. */
export async function finishedPicture(
  session: Session,
  { garment, body }: DraftedGarment,
): Promise<ReadonlyMap<string, string>> {
  const [unworn] = notWorn(garment);
  if (unworn !== undefined)
    throw unusable(
      'not-worn-yet',
      unworn,
      `It is not known yet how this is put on: ${unworn}. Leave --finished out.`,
    );
  const { form, hung, stand } = await putOn(session, garment, await clothCalled(usualCloth), body, COARSE);
  const title = `${garment.name} for ${garment.body}`;
  return new Map([['finished.svg', sidesBeside(shownWorn(form, hung, stand), ['front', 'back'], title)]]);
}
