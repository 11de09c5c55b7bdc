import type { Body } from '../../engine/body/body.ts';
import type { WovenCloth } from '../../engine/cloth/cloth.ts';
import type { Garment } from '../../engine/pattern/garment.ts';
import { progress } from '../output/progress.ts';
import type { Session } from '../session.ts';
import { hanging, type PutOn } from './hanging.ts';

/**
 * Puts a garment on the form of a body, with a bar where somebody looks on. Ctrl-C ends the hanging, not the command: the best
 * so far is kept. `hang`: whether its arms are raised then.
 */
export async function putOn(
  session: Session,
  garment: Garment,
  cloth: WovenCloth,
  body: Body,
  spacing: number,
  hang: typeof hanging = hanging,
): Promise<PutOn> {
  const bar = progress(session, `hanging on ${body.name}`);
  let enough = false;
  const deaf = session.onInterrupt(() => {
    enough = true;
  });
  try {
    return await hang(garment, cloth, body, spacing, {
      reached: async (share) => {
        bar.reached(share);
        // Signals are heard between two steps.
        await new Promise(setImmediate);
      },
      enough: () => enough,
    });
  } finally {
    deaf();
    bar.done();
  }
}
