import { readFile } from 'node:fs/promises';
import { isIP } from 'node:net';
import type { NatsConnection, TlsOptions } from '@nats-io/transport-node';
import { reason } from '../input/reason.ts';
import { unusable } from '../input/unusable.ts';

/** Milliseconds until a server is taken not to answer. */
const patience = 10_000;

/**
 * Connects with a NATS server, and for as long as it takes again whenever it was away. Who one is stands in a file
 * (`--creds`, or the one that BODKIN_NATS_CREDS names), or in BODKIN_NATS_USER with BODKIN_NATS_PASSWORD, or in BODKIN_NATS_TOKEN:
 * never on the command line. The line is encrypted wherever the server offers it, and to a tls:// address only so.
 */
export async function connectTo(url: string, creds: string | undefined): Promise<NatsConnection> {
  const { host: servers, hostname, protocol } = addressOf(url);
  // Loaded here because no other command needs it.
  const { connect, credsAuthenticator } = await import('./nats.ts');
  const { BODKIN_NATS_CREDS, BODKIN_NATS_USER, BODKIN_NATS_PASSWORD, BODKIN_NATS_TOKEN } = process.env;
  const file = creds ?? BODKIN_NATS_CREDS;
  const who = file
    ? { authenticator: credsAuthenticator(await readCreds(file)) }
    : BODKIN_NATS_USER
      ? { user: BODKIN_NATS_USER, pass: BODKIN_NATS_PASSWORD ?? '' }
      : BODKIN_NATS_TOKEN
        ? { token: BODKIN_NATS_TOKEN }
        : {};
  try {
    const options = { servers, ...who, name: 'bodkin', timeout: patience, maxReconnectAttempts: -1 };
    return await connect({ ...options, tls: certified(hostname) }).catch((error: unknown) => {
      if (protocol === 'tls:' || !/does not support 'tls'/.test(String(error))) throw error;
      return connect(options);
    });
  } catch (error) {
    throw unusable('server-unreachable', url, `The server at ${url} cannot be reached: ${reason(error)}`);
  }
}

/** The address of a server, such as nats://127.0.0.1:4222. */
function addressOf(url: string): URL {
  const read = URL.canParse(url) ? new URL(url) : undefined;
  if (!read || !['nats:', 'tls:'].includes(read.protocol) || read.hostname === '')
    throw unusable('value-unusable', '--to', `“${url}” is no address like nats://127.0.0.1:4222.`);
  if (read.username || read.password)
    throw unusable(
      'credentials-on-line',
      '--to',
      'Leave name and password out of --to: everybody on this machine can read them there. Give --creds FILE, or set BODKIN_NATS_USER and BODKIN_NATS_PASSWORD.',
    );
  return read;
}

/**
 * What an encrypted line asks of the server's certificate: that it is to the name that was said. Of a server called by a number the
 * client would hold it to “localhost”.
 */
function certified(hostname: string): TlsOptions & { readonly host?: string } {
  const host = hostname.replace(/^\[|\]$/g, '');
  return isIP(host) === 0 ? {} : { host };
}

async function readCreds(file: string): Promise<Uint8Array> {
  try {
    return await readFile(file);
  } catch (error) {
    throw unusable('cannot-read', file, `Cannot read ${file}: ${reason(error)}`);
  }
}
