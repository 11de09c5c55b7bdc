import { readFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { pageFiles, type ServedPage, servePage } from '../../../cli/open/page-server.ts';
import { bodkin } from '../session.ts';

const folder = new URL('../../../cli/page/', import.meta.url);
let page: ServedPage;
let port = 0;

beforeAll(async () => {
  page = await servePage(await pageFiles(folder), 0);
  port = Number(new URL(page.address).port);
});
afterAll(() => page.close());

/** Asks with the very bytes of a request, as no well-behaved client would. */
const asked = (line: string, host = `localhost:${port}`): Promise<string> =>
  said(`${line} HTTP/1.1\r\nHost: ${host}\r\nConnection: close\r\n\r\n`);

const said = (bytes: string): Promise<string> =>
  new Promise((resolve, reject) => {
    let answer = '';
    const socket = connect(port, '127.0.0.1', () => socket.write(bytes));
    socket.on('data', (part) => {
      answer += part;
    });
    socket.on('close', () => resolve(answer));
    socket.on('error', reject);
  });

const status = (answer: string): number => Number(answer.split(' ')[1]);

describe('the page as it is served', () => {
  test('is its files, and the first of them where none is named', async () => {
    const index = await readFile(new URL('index.html', folder), 'utf8');
    for (const line of ['GET /', 'GET /index.html', 'GET /?x=1']) {
      const answer = await asked(line);
      expect(status(answer)).toBe(200);
      expect(answer).toContain(index);
    }
    expect(await asked('GET /styles/print.css')).toContain('content-type: text/css');
    expect((await asked('HEAD /')).split('\r\n\r\n')[1]).toBe('');
  });

  test('says with everything that nothing may come from elsewhere, and no script stand in it', async () => {
    const index = await readFile(new URL('index.html', folder), 'utf8');
    for (const line of ['GET /', 'GET /nowhere', 'POST /']) {
      const answer = await asked(line);
      const policy = /^content-security-policy: (.*)$/m.exec(answer)?.[1] ?? '';
      expect(policy).toContain("default-src 'none'");
      expect(policy).not.toContain('unsafe');
      expect(answer).toContain('x-content-type-options: nosniff');
      // Other hosts of the same folder send no such header: the page says it itself.
      expect(index).toContain(policy.replace(/;[^;]*$/, ''));
    }
  });

  test.each([
    'GET /../package.json',
    'GET /..%2fpackage.json',
    'GET /%2e%2e/package.json',
    'GET /..\\package.json',
    'GET //etc/passwd',
    'GET /views',
    'GET /views/',
    'GET /build.js/../../build.js',
    'GET http://localhost/',
    'GET /index.html%00',
  ])('has no way out of its folder: %s', async (line) => {
    expect(status(await asked(line))).toBe(404);
  });

  test.each(['POST /', 'PUT /x', 'DELETE /index.html', 'OPTIONS /', 'PATCH /', 'TRACE /'])(
    'takes nothing and changes nothing: %s',
    async (line) => {
      expect(status(await asked(line))).toBe(405);
    },
  );

  test('is answered to its own name alone', async () => {
    expect(status(await asked('GET /', `127.0.0.1:${port}`))).toBe(200);
    for (const host of [
      ...['example.test', `example.test:${port}`, 'localhost', `localhost:${port + 1}`, `LOCALHOST:${port}`],
      ...[`localhost:${port}.example.test`, `a.localhost:${port}`, `0.0.0.0:${port}`, `localhost.:${port}`],
    ])
      expect([host, status(await asked('GET /', host))]).toEqual([host, 421]);
  });

  test('is answered to no one who names no host, or two, or asks to speak otherwise', async () => {
    const own = `Host: localhost:${port}\r\n`;
    const other = 'Host: example.test\r\n';
    const rest = 'Connection: close\r\n\r\n';
    const refused = [
      `GET / HTTP/1.0\r\n${rest}`,
      `GET / HTTP/1.1\r\n${rest}`,
      `GET / HTTP/1.1\r\n${other}${own}${rest}`,
      `GET http://example.test/ HTTP/1.1\r\n${own}${rest}`,
      `CONNECT example.test:80 HTTP/1.1\r\n${own}${rest}`,
      `POST /index.html HTTP/1.1\r\n${own}Content-Length: 100000\r\n${rest}${'x'.repeat(100_000)}`,
      `GET / HTTP/1.1\r\n${own}X-Long: ${'x'.repeat(100_000)}\r\n${rest}`,
      'nonsense\r\n\r\n',
    ];
    for (const bytes of refused) {
      const answer = await said(bytes).catch(() => '');
      expect(answer, bytes.slice(0, 100)).not.toContain('<div id="page">');
    }
    // To speak by sockets is asked for in vain: it is a file that is answered, or nothing.
    const upgraded = await said(
      `GET / HTTP/1.1\r\n${own}Upgrade: websocket\r\nConnection: Upgrade\r\n\r\n${`GET / HTTP/1.1\r\n${own}${rest}`}`,
    );
    expect(upgraded).not.toContain(' 101 ');
  });

  test('is not served to other machines', async () => {
    const { networkInterfaces } = await import('node:os');
    const own = Object.values(networkInterfaces())
      .flatMap((each) => each ?? [])
      .find(({ family, internal }) => family === 'IPv4' && !internal)?.address;
    if (own === undefined) return;
    await expect(
      new Promise((resolve, reject) => connect(port, own, () => resolve('answered')).on('error', reject)),
    ).rejects.toThrow('ECONNREFUSED');
  });
});

test('bodkin open says in words that a port is taken', async () => {
  const { code, err } = await bodkin(['open', '--port', String(port)]);
  expect([code, err.replaceAll('\n', ' ')]).toEqual([2, expect.stringMatching(/port|not built/)]);
});
