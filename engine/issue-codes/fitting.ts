/** Codes of what is found in the list of a fitting. */
export const fittingCodes = {
  'fitting-not-a-list':
    'What was pinned is a list, one change a line with a dash before it. Write it like “- round back: 1”.',
  'fitting-too-long': 'There are more changes than one fitting finds. Write only those of the last one.',
  'fitting-not-understood':
    'A change is one name with its amount, and the few words that belong to it. Write each on a dash of its own.',
  'unknown-fitting': 'No change has this name. Take the one that is suggested.',
  'fitting-amount': 'A change needs an amount above nothing, without its unit. Write how much was pinned.',
  'fitting-side': 'This change is found on one side only. Add “side: left” or “side: right”, her own.',
  'fitting-not-one-sided':
    'This change would move a piece that is cut alike for both sides. Leave the side out, or choose as it says.',
  'unknown-seam': 'This seam is not one that can be taken in or let out. Take one of those named.',
  'unknown-level': 'The seam has no place of its own at this level. Take one of those named.',
  'fitting-contradicts': 'Two changes undo each other. Write only what is left of the two.',
  'fitting-too-much':
    'More was pinned than a fitting can change. Measure again, and sew another trial bodice.',
  'fitting-without-place':
    'This garment has nothing that the change could move, so it does nothing here. Nothing needs doing.',
  'fitting-changes-girth': 'The fitting makes this girth larger or smaller on purpose. Nothing needs doing.',
  'fitting-tighter-than-body':
    'The fitting makes this girth smaller than the body. Measure the body again there before you cut.',
  'fitting-cannot-agree':
    'The body can be drafted, but not with this fitting. Change by less, or sew another trial bodice.',
} as const;
