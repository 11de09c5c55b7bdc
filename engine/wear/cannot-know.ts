/** What no garment worn on a computed form can tell, one sentence each. */
export const cannotKnow: readonly string[] = [
  'It is no substitute for a trial bodice in cloth.',
  'The body is a form computed from girths and lengths: its posture, and how far it is deep where another is wide, are likely, not hers.',
  'It does not move, breathe or sit, and no flesh gives way; what a bra does is not known.',
  'Left and right of the form are alike, and arms rise in sleeves only, sideways, without the shoulder: whether a bare armhole binds is not seen.',
  'Seam allowances, interfacing, facings, bones and pressing are left out; a lining only weighs and stiffens. Friction is guessed from the cloth alone, and no cloth meets other cloth.',
];
