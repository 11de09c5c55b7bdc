import type { Issue } from '../issue.ts';

/** An issue of one size of a chart, with the size before what it is about. */
export const atSize = (size: string, issue: Issue): Issue => ({
  ...issue,
  path: `size ${size}${issue.path === '' ? '' : `: ${issue.path}`}`,
});
