/** Codes of laying pieces, or other shapes, on cloth. */
export const layCodes = {
  'nothing-to-lay': 'There is nothing to lay. Name a garment, or shapes of which some are wanted.',
  'not-shapes': 'The file is no list of shapes with a strip. Put right what is named.',
  'shape-empty': 'A shape has no area. Draw it with three corners at least.',
  'shape-crossed': 'The outline of a shape crosses itself. Draw it apart there.',
  'shape-too-broad':
    'A shape is broader than the cloth in every way it may lie. Take broader cloth, or lay it open.',
  'shape-off-stripe':
    'A piece has no room on the cloth where its stripes would meet. Take broader cloth, or lay it open.',
  'piece-not-laid':
    'A piece cannot be laid: its fold is not straight on the grain, or the gap asked for is too wide for its shape. Ask for a smaller gap.',
  'no-lay-found': 'No lay was found in the time given. Give more seconds, or broader cloth.',
  'number-not-understood': 'The option takes a number within its limits. Write it plainly.',
  'length-not-understood':
    'The option takes a length within its limits. Write it in mm, or with its unit behind it.',
  'plan-unreadable': 'The plan that was written cannot be read back. Do not cut by it; lay again.',
  'lay-outside': 'A piece does not lie on the cloth. Do not cut by this plan; lay again.',
  'lay-overlap': 'Two pieces lie on each other. Do not cut by this plan; lay again.',
  'lay-off-fold': 'A piece that is cut on the fold does not lie on it. Do not cut by this plan; lay again.',
  'lay-off-stripe': 'A piece does not lie where its stripes would meet. Do not cut by this plan; lay again.',
  'lay-not-the-piece':
    'What is drawn on the plan is not the cutting line of its piece. Do not cut by it; lay again.',
  'lay-count':
    'A piece comes out more or less often than it is to be cut. Do not cut by this plan; lay again.',
} as const;
