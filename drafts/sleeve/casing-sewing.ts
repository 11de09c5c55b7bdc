import type { Amount, SewingStep } from '../../engine/pattern/sewing.ts';
import { cautions } from '../cautions.ts';
import { state } from '../sewing-stages.ts';
import { amounts, workroomRules as workroom } from '../workroom-rules.ts';
import type { PuffStyling } from './choices.ts';
import { sleeveRules as rules } from './rules.ts';

const roomInCasing = ({ elasticWidth }: PuffStyling): Amount => ({
  says: 'room in the casing: the elastic and a quarter inch',
  mm: elasticWidth + rules.casingRoom.value,
  source: `${rules.casingRoom.id}, ${rules.casingRoom.source}`,
});

/** A hem turned up as a casing, for a single sleeve. */
export const turnedCasing = (styling: PuffStyling): SewingStep => ({
  title: 'Turn up the sleeve hems as casings',
  turns: [{ piece: 'sleeve', edge: 'hem' }],
  brings: [state('sleeve', 'casing stitched', 'casing'), state('sleeve', 'opening left', 'casing')],
  stitch: '301',
  seamClass: 6,
  finish: 'turned',
  how: [
    'Turn the raw edge under, turn the hem up along its line, and press.',
    'Stitch round close to the inner fold. Leave an opening beside the sleeve seam.',
  ],
  amounts: [
    ...amounts(rules.turnUnder),
    roomInCasing(styling),
    ...amounts(workroom.edgeStitch, workroom.opening),
  ],
  cautions: [cautions.hotEdge],
});

/** A casing between the two halves of a sleeve cut double, at the fold of its hem. */
export const foldedCasing = (styling: PuffStyling): SewingStep => ({
  title: 'Fold the sleeves and stitch their casings',
  brings: [
    state('sleeve', 'folded', 'hem'),
    state('sleeve', 'casing stitched', 'casing'),
    state('sleeve', 'opening left', 'casing'),
  ],
  stitch: '301',
  seamClass: 6,
  how: [
    'Turn the half with the gap into the other, wrong sides together, seam on seam and crown on crown, and press the fold of the hem.',
    'Stitch round along the casing line through both layers. From now on the two are handled as one.',
  ],
  amounts: [roomInCasing(styling)],
  cautions: [cautions.iron],
});

/** Elastic led through a casing. */
export const threadElastic: SewingStep = {
  title: 'Thread the elastic',
  needs: [state('sleeve', 'casing stitched', 'casing'), state('sleeve', 'opening left', 'casing')],
  brings: [state('sleeve', 'threaded', 'casing')],
  uses: ['sleeve elastic'],
  stitch: '304',
  seamClass: 2,
  how: [
    'Mark the overlap on both ends, pin the elastic to a ring and try it round the arm.',
    'Thread it through the casing without twisting it, lap the ends to the marks and sew them together.',
  ],
  amounts: amounts(rules.elasticOverlap),
  cautions: [cautions.elastic],
};

/** A casing closed once it is threaded, in the words for this one. */
export const closeCasing = (how: string): SewingStep => ({
  title: 'Close the casings',
  needs: [state('sleeve', 'threaded', 'casing')],
  brings: [state('sleeve', 'casing closed', 'casing')],
  stitch: '301',
  seamClass: 6,
  how: [how],
});
