import type { Consumer, JetStreamManager, JsMsg } from '@nats-io/jetstream';
import type { NatsConnection } from '@nats-io/transport-node';
import { reason } from '../input/reason.ts';
import { unusable } from '../input/unusable.ts';
import type { Store } from './store.ts';

/** A chunk is given to so many workers; to the next it is only given to be set aside. */
export const mostTries = 5;

/** The server gives up later than the workers do: should one die while it sets a chunk aside, another will. */
const mostDeliveries = mostTries + 5;

/** A worker not heard of for so long (ms) is taken for dead, and its chunk given to another. */
const usualAckWait = 60_000;

const nanoseconds = 1e6;

/** Chunks of one store that wait to be answered by one code of the program. */
export interface Queue {
  /** Names a chunk to the server, and waits until it has written it down. `again` where it was told before and set aside. */
  readonly publish: (chunk: string, again: boolean) => Promise<void>;
  /** The next chunk, or nothing if none came within `patience` ms. */
  readonly next: (patience: number) => Promise<Task | undefined>;
  /** Whether no chunk waits and none is in work. */
  readonly isDone: () => Promise<boolean>;
}

/** A chunk in a worker's hands. */
export interface Task {
  readonly chunk: string;
  /** To how many workers it was given, this one counted. */
  readonly tries: number;
  /** Says every now and then that the work goes on, until the answer is called. */
  readonly keep: () => () => void;
  /** It is answered: the server has forgotten it when this resolves. */
  readonly done: () => Promise<void>;
  /** Another may have it, after so many ms. */
  readonly giveBack: (after?: number) => void;
  /** Nobody shall have it. */
  readonly drop: () => void;
}

/**
 * The queue of a store, made on the server where it is not there: a stream that keeps each reference on disk until it is
 * acknowledged, and one consumer that all workers of the same code share. Only names of chunks ever go through it.
 */
export async function openQueue(
  connection: NatsConnection,
  store: Store,
  code: string,
  ackWait = usualAckWait,
): Promise<Queue> {
  const { jetstream, jetstreamManager } = await import('./nats.ts');
  const stream = `bodkin-${store.id}`;
  const subject = `bodkin.${store.id}.${code}`;
  const js = jetstream(connection);
  const manager = await managed(() => jetstreamManager(connection));
  const consumer = async (): Promise<Consumer> => {
    await manager.streams.add({
      name: stream,
      subjects: [`bodkin.${store.id}.*`],
      retention: 'workqueue',
      storage: 'file',
    });
    const there = await manager.consumers.info(stream, code).catch(() => undefined);
    if (!there)
      await manager.consumers.add(stream, {
        durable_name: code,
        filter_subject: subject,
        ack_policy: 'explicit',
        ack_wait: ackWait * nanoseconds,
        max_deliver: mostDeliveries,
        max_ack_pending: 100_000,
      });
    return js.consumers.get(stream, code);
  };
  let shared: Consumer;
  try {
    shared = await consumer();
  } catch (error) {
    throw refused('does not make the queue', error);
  }
  const { ack_wait = usualAckWait * nanoseconds } = (await shared.info(true)).config;
  const beat = ack_wait / nanoseconds / 3;
  return {
    publish: async (chunk, again) => {
      const id = `${code}.${chunk}${again ? `.${Date.now()}` : ''}`;
      try {
        await js.publish(subject, JSON.stringify({ chunk }), { msgID: id, retries: 5 });
      } catch (error) {
        throw refused('does not take the orders', error);
      }
    },
    next: async (patience) => {
      try {
        const message = await shared.next({ expires: patience });
        return message ? taskOf(message, beat) : undefined;
      } catch {
        if (connection.isClosed()) throw refused('has closed the line', await connection.closed());
        // The server is away, or has lost the queue: whatever it was, it is met again if it lasts.
        await new Promise((resolve) => setTimeout(resolve, Math.min(patience, 1000)));
        shared = await consumer().catch(() => shared);
        return undefined;
      }
    },
    isDone: async () => {
      const info = await shared.info().catch(() => undefined);
      return info !== undefined && info.num_pending === 0 && info.num_ack_pending === 0;
    },
  };
}

/** A server that is just coming back is asked again, for half a minute. */
async function managed(ask: () => Promise<JetStreamManager>): Promise<JetStreamManager> {
  for (let left = 6; ; left--) {
    try {
      return await ask();
    } catch (error) {
      const name = error instanceof Error ? error.name : '';
      if (name === 'JetStreamNotEnabled')
        throw refused('keeps no streams: start it with JetStream (nats-server -js)', error);
      if (name !== 'TimeoutError' || left === 0) throw refused('is silent', error);
    }
  }
}

function taskOf(message: JsMsg, beat: number): Task {
  const { chunk } = message.json<{ readonly chunk: string }>();
  return {
    chunk,
    tries: message.info.deliveryCount,
    keep: () => {
      const beating = setInterval(() => message.working(), beat);
      return () => clearInterval(beating);
    },
    done: async () => {
      // Unheard, the chunk comes again, its answers are found in the store, and it is acknowledged then.
      await message.ackAck().catch(() => false);
    },
    giveBack: (after) => message.nak(after),
    drop: () => message.term(),
  };
}

const refused = (what: string, error: unknown) =>
  unusable('server-refuses', '--to', `The server ${what}: ${reason(error)}`);
