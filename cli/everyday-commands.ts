/* What is asked for most, loaded together: many small parts take longer to load than one. */
export { bodyCommand as body } from './body/body.ts';
export { draftCommand as draft } from './draft/draft.ts';
export { printCommand as print } from './draft/print.ts';
export { explainCommand as explain } from './explain.ts';
export { listCommand as list } from './list.ts';
export { sewCommand as sew } from './steps/sew.ts';
export { teachCommand as teach } from './steps/teach.ts';
export { walkCommand as walk } from './walk/walk.ts';
