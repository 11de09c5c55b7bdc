import { type ChildProcess, spawn } from 'node:child_process';
import { connect, createServer } from 'node:net';
import { installed } from '../../installed.ts';
import { until } from './program.ts';

/** Where the machine's nats-server is. */
export const natsServer = (): string | undefined =>
  installed(['/usr/sbin/nats-server', '/usr/bin/nats-server', '/usr/local/bin/nats-server'], 'nats-server');

export interface Server {
  readonly url: string;
  readonly stop: (signal?: NodeJS.Signals) => Promise<void>;
}

/** A server with streams on disk, heard on the loopback only. */
export async function startServer(
  binary: string,
  folder: string,
  port: number,
  more: readonly string[] = [],
): Promise<Server> {
  const words = ['-a', '127.0.0.1', '-p', String(port), '-js', '-sd', folder, ...more];
  const server: ChildProcess = spawn(binary, words, { stdio: 'ignore' });
  const ended = new Promise<void>((resolve) => server.on('close', () => resolve()));
  await until(() => isHeard(port));
  return {
    url: `nats://127.0.0.1:${port}`,
    stop: async (signal = 'SIGTERM') => {
      server.kill(signal);
      await ended;
    },
  };
}

/** A port that is free now. */
export const freePort = (): Promise<number> =>
  new Promise((resolve) => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const address = probe.address();
      probe.close(() => resolve(typeof address === 'object' && address ? address.port : 0));
    });
  });

const isHeard = (port: number): Promise<boolean> =>
  new Promise((resolve) => {
    const line = connect(port, '127.0.0.1')
      .on('connect', () => {
        line.destroy();
        resolve(true);
      })
      .on('error', () => resolve(false));
  });
