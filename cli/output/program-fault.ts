import type { Issue } from '../../engine/issue.ts';
import { reason } from '../input/reason.ts';

/** What is told of a fault that is the program's own, and where it came about, such as “on this body”. */
export const programFault = (error: unknown, where = ''): Issue => ({
  code: 'program-fault',
  severity: 'error',
  path: '',
  message: `The program itself failed${where && ` ${where}`}: ${reason(error)}`,
});
