import type { MessagePort } from 'node:worker_threads';
import type { Draft } from '../../engine/pattern/draft.ts';
import { run } from '../program.ts';
import type { Session } from '../session.ts';
import { type CommandTask, type FromThread, type Signal, signals, type ToThread } from './between.ts';

/** Runs a command line on this thread, for the one that began it: prints by it, and hears of signals from it. */
export async function runThere(
  { words, ...shown }: CommandTask,
  garments: readonly Draft[],
  port: MessagePort,
): Promise<void> {
  const say = (message: FromThread): void => port.postMessage(message);
  const taken: (() => void)[] = [];
  let isRead = true;
  port.on('message', (message: ToThread) => {
    if (message.tells === 'signal') {
      process.emit(message.signal, message.signal);
      return;
    }
    isRead = message.isRead;
    taken.shift()?.();
  });
  heedSignals((signal, heeds) => say({ says: 'heeds', signal, heeds }));
  const session: Session = {
    ...shown,
    garments,
    write: (text) =>
      new Promise((resolve) => {
        taken.push(resolve);
        say({ says: 'result', text });
      }),
    isRead: () => isRead,
    tell: (text) => say({ says: 'words', text }),
    reading: (file) => say({ says: 'reading', file }),
    onInterrupt: (told) => {
      process.once('SIGINT', told);
      return () => process.off('SIGINT', told);
    },
    clock: () => performance.now(),
  };
  try {
    const code = await run(words, session);
    await flushed(process.stderr);
    say({ says: 'end', code });
  } catch (error) {
    say({ says: 'fault', error });
  }
}

/** Signals reach the first thread alone; it hands on those that somebody waits for here. */
function heedSignals(tell: (signal: Signal, heeds: boolean) => void): void {
  const told = (change: number) => (name: string | symbol) => {
    const signal = signals.find((each) => each === name);
    if (signal) tell(signal, process.listenerCount(signal) + change > 0);
  };
  process.on('newListener', told(1)).on('removeListener', told(0));
}

/** What a draft printed itself goes by the thread's own stream. */
const flushed = (stream: NodeJS.WriteStream): Promise<void> =>
  new Promise((resolve) => {
    stream.write('', () => resolve());
  });
