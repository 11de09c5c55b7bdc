import { execFileSync } from 'node:child_process';
import { writeFile } from 'node:fs/promises';
import { createServer, connect as lineTo, type Socket } from 'node:net';
import { join } from 'node:path';
import { nkeys } from '@nats-io/transport-node';
import { installed } from '../../installed.ts';

/** Where the machine's openssl is. */
export const openssl = (): string | undefined =>
  installed(['/usr/bin/openssl', '/usr/local/bin/openssl'], 'openssl');

/** A certificate of one's own for 127.0.0.1, which is its own authority too, and its key. */
export function selfMade(binary: string, folder: string): { readonly cert: string; readonly key: string } {
  const [cert, key] = [join(folder, 'cert.pem'), join(folder, 'key.pem')];
  execFileSync(
    binary,
    [
      ...[
        'req',
        '-x509',
        '-newkey',
        'ec',
        '-pkeyopt',
        'ec_paramgen_curve:prime256v1',
        '-nodes',
        '-days',
        '2',
      ],
      ...['-keyout', key, '-out', cert, '-subj', '/CN=workroom', '-addext', 'subjectAltName=IP:127.0.0.1'],
    ],
    { stdio: 'ignore' },
  );
  return { cert, key };
}

const encoded = (data: unknown): string => Buffer.from(JSON.stringify(data)).toString('base64url');

/** A claim of one key of the server's over another, as its manual has it (NATS JWT, version 2; Ed25519). */
function claim(by: ReturnType<typeof nkeys.createUser>, sub: string, nats: object): string {
  const said = {
    jti: sub,
    iat: Math.floor(Date.now() / 1000),
    iss: by.getPublicKey(),
    name: 'rail',
    sub,
    nats,
  };
  const text = `${encoded({ typ: 'JWT', alg: 'ed25519-nkey' })}.${encoded(said)}`;
  return `${text}.${Buffer.from(by.sign(Buffer.from(text))).toString('base64url')}`;
}

/** Any number of everything. */
const unlimited = Object.fromEntries(
  ['subs', 'data', 'payload', 'imports', 'exports', 'conn', 'leaf'].map((what) => [what, -1]),
);
const streams = Object.fromEntries(
  ['mem_storage', 'disk_storage', 'streams', 'consumer'].map((what) => [what, -1]),
);

/** Lines of a server's configuration by which it trusts one operator with one account, and a file that makes its owner a user of it. */
export async function withCreds(
  folder: string,
): Promise<{ readonly config: string; readonly creds: string }> {
  const [operator, account, user] = [nkeys.createOperator(), nkeys.createAccount(), nkeys.createUser()];
  const operatorClaim = claim(operator, operator.getPublicKey(), { type: 'operator', version: 2 });
  const accountClaim = claim(operator, account.getPublicKey(), {
    type: 'account',
    version: 2,
    limits: { ...unlimited, ...streams, wildcards: true },
  });
  const userClaim = claim(account, user.getPublicKey(), { type: 'user', version: 2, ...unlimited });
  const creds = join(folder, 'sender.creds');
  const part = (what: string, text: string): string =>
    `-----BEGIN ${what}-----\n${text}\n------END ${what}------\n\n`;
  const seed = new TextDecoder().decode(user.getSeed());
  await writeFile(creds, part('NATS USER JWT', userClaim) + part('USER NKEY SEED', seed));
  const system = nkeys.createAccount();
  const systemClaim = claim(operator, system.getPublicKey(), {
    type: 'account',
    version: 2,
    limits: unlimited,
  });
  const config = [
    `operator: ${operatorClaim}`,
    `system_account: ${system.getPublicKey()}`,
    'resolver: MEMORY',
    `resolver_preload: { ${account.getPublicKey()}: ${accountClaim}, ${system.getPublicKey()}: ${systemClaim} }`,
  ].join('\n');
  return { config, creds };
}

/** A line to a port of this machine that writes down all that goes through it. */
export async function tapped(port: number): Promise<{
  readonly url: string;
  readonly heard: () => string;
  readonly stop: () => Promise<void>;
}> {
  const parts: Buffer[] = [];
  const lines = new Set<Socket>();
  const tap = createServer((near) => {
    const far = lineTo(port, '127.0.0.1');
    lines.add(near).add(far);
    for (const [from, to] of [
      [near, far],
      [far, near],
    ] as const) {
      from.on('data', (part: Buffer) => parts.push(part));
      from.on('error', () => to.destroy());
      from.pipe(to);
    }
  });
  await new Promise<void>((resolve) => tap.listen(0, '127.0.0.1', resolve));
  const address = tap.address();
  return {
    url: `nats://127.0.0.1:${typeof address === 'object' && address ? address.port : 0}`,
    heard: () => Buffer.concat(parts).toString('latin1'),
    stop: () => {
      for (const line of lines) line.destroy();
      return new Promise((resolve) => tap.close(() => resolve()));
    },
  };
}
