/** Codes of what is found in the choices of a garment, and where a garment cannot be drawn on their account. */
export const stylingCodes = {
  'styling-not-a-list': 'Choices are names with their values. Write them like “hemAllowance: 40”.',
  'setting-not-understood': 'After --set stands one choice. Write it like --set hemAllowance=40.',
  'unknown-styling': 'This garment has no choice of this name. Take the one suggested, or see “bodkin list”.',
  'unknown-styling-word': 'The choice has no such value. Take one of those named.',
  'styling-not-a-number': 'The choice takes a number. Write it plainly, in the unit that is named.',
  'styling-out-of-range': 'The value lies outside what this draft can make. Choose one within the limits.',
  'choice-in-vain':
    'A choice changes nothing, such as the fullness of a sleeve that is not there. Leave it out, or see whether another was meant.',
  'styling-cannot-agree':
    'Some of the choices cannot go together, or not on this body. Take the values that are named, or others between.',
  'draft-not-true':
    'A garment fails checks of its own, so it is not written. Change what it names; “bodkin walk” shows every figure.',
  'cannot-agree':
    'The lines of the draft cannot all hold for these measurements. Take again the ones it names, in the direction it says.',
  'strap-beyond-armhole':
    'The strap would pass the armhole by. Choose a narrower strap, one nearer to the neck, or a deeper neckline.',
  'fullness-out-of-reach':
    'The sides of the insert would lean too far to be cut. Choose less fullness, or more drawing up.',
  'hem-out-of-reach':
    'The gores for such a hem could not be cut. Choose a hem within the limits, or another length.',
  'sleeve-too-short': 'The sleeve has no room to taper above its hem. Make it longer, or its hem narrower.',
} as const;
