import { Worker } from 'node:worker_threads';

/**
 * Waits on a thread of its own; where it is not woken in time it says so, and ends the whole process, for the other thread
 * hears nobody while it runs in a circle.
 */
const watching = `
const { workerData: { flag, limit, words } } = require('node:worker_threads');
if (Atomics.wait(new Int32Array(flag), 0, 0, limit) === 'timed-out') {
  require('node:fs').writeSync(2, words);
  process.kill(process.pid, 'SIGTERM');
}`;

/** Watches over a file while it is read as a module, until the function that it gives is called. */
export function watchLoading(file: string, limit: number): () => void {
  const flag = new SharedArrayBuffer(4);
  const words = `error: ${file} ran for ${limit / 1000} seconds while it was read, and came to no end. Does a loop in it never end?\n`;
  new Worker(watching, { eval: true, workerData: { flag, limit, words } }).unref();
  return () => {
    const cell = new Int32Array(flag);
    Atomics.store(cell, 0, 1);
    Atomics.notify(cell, 0);
  };
}
