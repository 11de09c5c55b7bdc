/** Codes of what is wrong with a draft somebody writes herself, and of what a draft asks that excludes itself. */
export const ownDraftCodes = {
  'draft-mistake':
    'The source of the draft has a slip: a name, a kind or a value that is none. Put right the line it names.',
  'draft-garment-unfit':
    'What the draft hands back is no whole garment: something is missing or named that is not there. Mend the draft.',
  'draft-endless': 'The draft ran for too long and was ended: a loop in it never ends. Mend the draft.',
  'draft-fills-memory':
    'The draft kept more than fits into the memory, and was ended: a loop in it keeps all that it makes. Mend the draft.',
  'draft-cannot-agree':
    'Two things the draft asks for exclude each other, whoever is measured. Mend the draft; your measurements are not to blame.',
  'draft-not-pure':
    'The draft draws something else when it draws the same again. Take out randomness, clocks and what it keeps between two drawings.',
  'draft-given-otherwise':
    'The draft draws with another number than was measured or chosen. Hand drawGarment the body and the styling as they are.',
  'draft-steps-alike':
    'Steps of the construction have one title, so that they cannot be told apart. Give each a title of its own.',
  'shaped-by-incomplete':
    'A measurement changes the garment, and the draft does not name it in shapedBy. Add it, or leave off reading it.',
} as const;
