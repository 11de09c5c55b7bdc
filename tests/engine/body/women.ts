/** A woman of middling size, cm: the least that can be read, and nothing to remark on. */
export const woman = {
  name: 'prompter',
  units: 'cm',
  bustGirth: 92,
  waistGirth: 74,
  hipGirth: 98,
  backNeckPointToWaist: 41,
};
