import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openssl, selfMade, tapped, withCreds } from './guarded-server.ts';
import { freePort, natsServer, startServer } from './nats-server.ts';
import { bodkin, ndjson, orderOf } from './program.ts';

const [binary, ssl] = [natsServer(), openssl()];

if (binary === undefined || ssl === undefined)
  process.stderr.write('No nats-server or no openssl here: encrypted lines and credentials are left out.\n');

describe.skipIf(binary === undefined || ssl === undefined)(
  'orders through a server that is encrypted and asks who one is',
  { timeout: 120_000 },
  () => {
    let folder = '';
    let file = '';
    let tls = '';
    let authority: NodeJS.ProcessEnv = {};

    beforeAll(async () => {
      folder = await mkdtemp(join(tmpdir(), 'bodkin-'));
      file = join(folder, 'orders.ndjson');
      await writeFile(file, ndjson([0, 1, 2].map((i) => orderOf(i, { write: [] }))));
      const { cert, key } = selfMade(ssl ?? '', folder);
      tls = `tls { cert_file: "${cert}", key_file: "${key}" }\n`;
      authority = { NODE_EXTRA_CA_CERTS: cert };
    });

    afterAll(() => rm(folder, { recursive: true, force: true }));

    /** A server of this configuration, and a line to it that is listened to. */
    async function guarded<T>(
      name: string,
      config: string,
      use: (to: string, heard: () => string) => Promise<T>,
    ): Promise<T> {
      const path = join(folder, `${name}.conf`);
      await writeFile(path, config);
      const port = await freePort();
      const server = await startServer(binary ?? '', join(folder, `${name}-streams`), port, ['-c', path]);
      const tap = await tapped(port);
      try {
        return await use(tap.url, tap.heard);
      } finally {
        await server.stop();
        await tap.stop();
      }
    }

    /** Sends, works off and collects; what the last two said. */
    async function throughAll(to: string, env: NodeJS.ProcessEnv, more: readonly string[] = []) {
      const store = await mkdtemp(join(folder, 'store-'));
      const words = ['--store', store, '--to', to, '--json', ...more];
      const sent = await bodkin(['send', file, '--chunk', '2', ...words], env);
      const worked = await bodkin(['work', '--until-done', ...words], env);
      const collected = await bodkin(['collect', '--store', store, '--out', join(store, 'out'), '--json']);
      const said = [sent, worked, collected];
      expect(said.map(({ err }) => err).join('')).not.toMatch(/curtain|SU[A-Z0-9]{50}/);
      return said.map(({ out }) => JSON.parse(out));
    }

    const expectDone = (said: readonly unknown[]): void =>
      expect(said).toMatchObject([
        { ok: true, published: 2 },
        { ok: true, chunks: 2 },
        { ok: true, orders: 3, allTrue: 3 },
      ]);

    const refused = async (to: string, env: NodeJS.ProcessEnv, more: readonly string[] = []) => {
      const words = ['send', file, '--store', join(folder, 'never'), '--to', to, '--json', ...more];
      const { out, code } = await bodkin(words, env);
      expect(code).toBe(2);
      return JSON.parse(out).issues;
    };

    const unreachable = [{ code: 'server-unreachable' }];
    const user = { BODKIN_NATS_USER: 'sender', BODKIN_NATS_PASSWORD: 'curtain' };
    const users = 'authorization { users: [ { user: sender, password: curtain } ] }\n';

    it('with a name and a password, none of which is heard on the line', async () => {
      await guarded('password', tls + users, async (to, heard) => {
        expectDone(await throughAll(to, { ...authority, ...user }));
        expect(heard()).not.toMatch(/curtain|sender|bodkin/);
        expect(heard()).toContain('INFO');
        expect(await refused(to, { ...authority, ...user, BODKIN_NATS_PASSWORD: 'wings' })).toMatchObject(
          unreachable,
        );
        expect(await refused(to, authority)).toMatchObject(unreachable);
      });
    });

    it('and without encryption the listener hears them: so it does listen', async () => {
      await guarded('plain', users, async (to, heard) => {
        expectDone(await throughAll(to, user));
        expect(heard()).toMatch(/curtain/);
        expect(heard()).toMatch(/bodkin\.[0-9a-f]{16}/);
        expect(await refused(to.replace('nats:', 'tls:'), user)).toMatchObject(unreachable);
      });
    });

    it('not where the certificate is of nobody known', async () => {
      await guarded('stranger', tls + users, async (to, heard) => {
        const [issue] = await refused(to, user);
        expect(issue).toMatchObject({
          code: 'server-unreachable',
          message: expect.stringMatching(/certificate/),
        });
        expect(heard()).not.toContain('curtain');
      });
    });

    it('with a token', async () => {
      await guarded('token', `${tls}authorization { token: curtain }\n`, async (to, heard) => {
        expectDone(await throughAll(to, { ...authority, BODKIN_NATS_TOKEN: 'curtain' }));
        expect(heard()).not.toContain('curtain');
        expect(await refused(to, { ...authority, BODKIN_NATS_TOKEN: 'wings' })).toMatchObject(unreachable);
      });
    });

    it('with a file of credentials, named on the line or in the environment', async () => {
      const { config, creds } = await withCreds(folder);
      await guarded('creds', tls + config, async (to) => {
        expectDone(await throughAll(to, authority, ['--creds', creds]));
        expectDone(await throughAll(to, { ...authority, BODKIN_NATS_CREDS: creds }));
        const others = await mkdtemp(join(folder, 'others-'));
        const { creds: strangers } = await withCreds(others);
        expect(await refused(to, authority, ['--creds', strangers])).toMatchObject(unreachable);
        expect(await refused(to, authority, ['--creds', join(folder, 'none')])).toMatchObject([
          { code: 'cannot-read' },
        ]);
      });
    });
  },
);
