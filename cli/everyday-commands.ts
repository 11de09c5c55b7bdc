/* What is asked for most, loaded together: many small parts take longer to load than one. */
export { bodyCommand as body } from './body.ts';
export { draftCommand as draft } from './draft.ts';
export { explainCommand as explain } from './explain.ts';
export { listCommand as list } from './list.ts';
export { printCommand as print } from './print.ts';
export { sewCommand as sew } from './sew.ts';
export { teachCommand as teach } from './teach.ts';
export { walkCommand as walk } from './walk.ts';
