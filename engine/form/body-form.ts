import type { Body } from '../body/body.ts';
import { armOf } from './arm.ts';
import { formChoices, type Posture } from './choices.ts';
import { closed, layTapes } from './close.ts';
import type { Form } from './form.ts';
import { landmarksOf } from './landmarks.ts';
import { legOf } from './leg.ts';
import { limbMesh } from './limbs.ts';
import { mirrored } from './mesh.ts';
import { reportOf } from './report.ts';
import { ringsOf } from './rings.ts';
import { surfaceOf } from './surface.ts';
import { tapesOf } from './tape-places.ts';
import { torsoMesh } from './torso.ts';

/**
 * A closed form of a body, on which every tape gives back the measurement it was made from: girths within 0.5 mm, lengths
 * and widths within 2 mm, or the report says which are not. Where measurements leave the form open it is the likeliest:
 * breadths and depths by a survey, posture as `formChoices` says, unless `posture` chooses. Left and right mirror each
 * other. Pure: the same body gives the same form to the last bit. 65 to 125 ms of processor time once warm (tests/bench/form.ts).
 */
export function bodyForm(body: Pick<Body, 'name' | 'size' | 'known'>, posture: Posture = {}): Form {
  const found = closed(body, posture);
  const { frame } = found;
  const rings = ringsOf(frame);
  const rise = posture.armRise ?? formChoices.armRise.usual;
  const limb = armOf(body.size, frame, rings, rise);
  const arm = limbMesh(limb);
  const leg = limbMesh(legOf(body.size, frame));
  const tapes = [...tapesOf(layTapes(frame, rings)), ...limb.tapes];
  const { crotch } = frame;
  const { underarm, bust, underBust, waist, hip } = frame.levels;
  return {
    body: body.name,
    surface: surfaceOf({
      torso: torsoMesh(frame, rings),
      'left arm': arm,
      'right arm': mirrored(arm),
      'left leg': leg,
      'right leg': mirrored(leg),
    }),
    landmarks: landmarksOf(frame, rings, limb),
    levels: { underarm, bust, underBust, waist, hip, crotch },
    tapes,
    report: reportOf(body, found, tapes, posture),
  };
}
