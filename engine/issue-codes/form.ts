/** Codes of a form made from measurements. */
export const formCodes = {
  'form-misses-measurement':
    'No likely form has all of the measurements. Take this one again; what is shown is the nearest form.',
  'form-of-a-child':
    'Proportions come from a survey of women. Do not judge by the form how something sits on a child.',
  'unknown-posture': 'No choice of a form has this name. Take the name that is suggested, or leave it out.',
  'posture-out-of-range': 'Nobody stands or is built so. Choose within the range that is named.',
  'form-not-asked': 'A folder and a posture matter only with --form. Add it, or leave them out.',
} as const;
