/* Everything else that can be asked for, loaded only then. */
export { alterCommand as alter } from './alter/alter.ts';
export { completionCommand as completion } from './completion/completion.ts';
export { gradeCommand as grade } from './grade/grade.ts';
export { layCommand as lay } from './lay/lay.ts';
export { openCommand as open } from './open/open.ts';
export { collectCommand as collect } from './orders/collect.ts';
export { sendCommand as send } from './orders/send.ts';
export { workCommand as work } from './orders/work.ts';
export { proveCommand as prove } from './prove/prove.ts';
export { wearCommand as wear } from './wear/wear.ts';
