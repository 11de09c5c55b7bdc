/** Codes of what is found in a body's measurements. */
export const measurementCodes = {
  'no-measurements': 'There is nothing to draft from. Write one measurement a line, and their unit.',
  'measurement-missing':
    'Bust, waist and hip girth and the back neck point to waist cannot be estimated. Take this one and write it down.',
  'units-missing': 'The file does not say in which unit she was measured. Add a line such as “units: cm”.',
  'unknown-unit': 'Measurements are in cm, in or mm. Write one of these after “units:”.',
  'unknown-field': 'No measurement has this name. Take the name that is suggested, or leave the line out.',
  'unknown-fields': 'Still more names are no measurements. Put the first ones right, and look again.',
  'not-a-number': 'A number is written like 36.25, 36 1/4 or 36-1/4, without its unit. Write this one so.',
  'name-unusable': 'A name is one line of at most 80 letters. Shorten it.',
  'age-out-of-range': 'An age is in whole years, up to 130. Put it right, or leave it out.',
  'unknown-cup':
    'The cup is none of EN 13402. Measure under the bust instead, or take the letter of your difference.',
  'cup-disagrees':
    'The girths make another cup than the one written down. The girths are used; measure both again, or leave the cup out.',
  'unit-mistaken':
    'The number is right in another unit than the one the file names. Put the unit right, or write the number in it.',
  'digits-exchanged':
    'Two digits of a number seem, or may, have changed places. Read it again, write it as proposed, or list it as sure.',
  'measurements-exchanged':
    'Two measurements seem to stand in each other’s place. Exchange them, or list them as sure.',
  'bra-size-not-read': 'A bra size is no measurement. Measure under the bust, or write the cup alone.',
  'sure-not-understood': 'What was measured twice is a list of names. Write it like sure: [waistGirth].',
  'sure-of-too-much':
    'Measurements that you are sure of contradict each other. Measure them again, or be sure of fewer.',
  'reconcile-not-understood':
    'To have contradictions moved, the line reads reconcile: true. Write it so, or leave it out.',
  'reconcile-offered':
    'Contradicting measurements can be moved to the likeliest body. Write reconcile: true where she cannot be measured again.',
  'measurement-reconciled':
    'A measurement contradicted others and was moved as little as would do. Measure it again if you can.',
  'measurement-misread':
    'A measurement lies so far from what the others say that it was probably misread. Measure it again.',
  'girth-halved': 'The number looks like half the girth, as it is measured flat. Write the whole girth.',
  'measurement-out-of-range':
    'Nobody measures so much or so little here. Measure again, and look at the unit.',
  'measurement-unlikely': 'Hardly anybody measures so much or so little here. Measure again before you cut.',
  'measurement-unusual':
    'Nine in ten women lie nearer the middle. Nothing is wrong if she is so; else measure again.',
  'proportion-unlikely':
    'Two measurements seldom go together like this. See that they were not swapped, and take both again.',
  'front-length-unlikely':
    'The front length is unusual for this back and cup. Take it again over the bust point, to the same waist as behind.',
  'measurements-contradict':
    'No body has all of these measurements. Take again the ones that are named, to the same tape round the waist.',
  'child-wearer':
    'The wearer counts as a child, and nothing is drawn up by a string at the neck. If she is grown up, give her age.',
  'drawstring-refused':
    'A drawstring at a child’s neck can strangle (EN 14682, 16 CFR 1120). Choose fixed gathers.',
} as const;
