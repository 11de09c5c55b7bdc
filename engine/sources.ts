/** Where a rule is everybody's and nobody's. */
export const commonPractice = 'common practice, no source';
