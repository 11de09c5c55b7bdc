import { readdir, readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname } from 'node:path';

/** A file as it is served. */
interface ServedFile {
  readonly type: string;
  readonly content: Buffer;
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.yaml': 'text/plain; charset=utf-8',
  '.json': 'application/json',
  '.csv': 'text/plain; charset=utf-8',
  '.ttf': 'font/ttf',
};

/**
 * Said with every answer: nothing from elsewhere, no script in the page itself, and no other site may show or read it. The hash
 * is that of the script of the frame in which edited code is run apart, which begins its worker from a text
 * (`page/views/code/frame.ts`).
 */
const headers = {
  'content-security-policy':
    "default-src 'none'; script-src 'self' 'sha256-GxQFA4bqhaq5PlZRzGLlA6g+qFTmf3mpIzsUs7/H+EM='; style-src 'self'; img-src 'self' blob:; worker-src 'self' blob:; " +
    "connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-opener-policy': 'same-origin',
  'cross-origin-resource-policy': 'same-origin',
  'cache-control': 'no-cache',
} as const;

/**
 * What the worker’s script is served under: it may compile WebAssembly besides, the kilobyte that hangs cloth, which lets no text
 * be run as script. The page itself may not.
 */
const workerPolicy = headers['content-security-policy'].replace(
  "script-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
);

/**
 * The files of the built page by the path that is asked for, read once: a path that is not one of these leads nowhere, so
 * none leads out of the folder.
 */
export async function pageFiles(folder: URL): Promise<ReadonlyMap<string, ServedFile>> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  const within = (parent: string, name: string): string =>
    `${parent}/${name}`.slice(decodeURIComponent(folder.pathname).replace(/\/$/, '').length);
  const files = new Map<string, ServedFile>();
  for (const entry of entries) {
    const type = types[extname(entry.name)];
    if (!entry.isFile() || type === undefined) continue;
    const path = within(entry.parentPath.replaceAll('\\', '/').replace(/\/$/, ''), entry.name);
    files.set(path, { type, content: await readFile(`${entry.parentPath}/${entry.name}`) });
  }
  const index = files.get('/index.html');
  if (index) files.set('/', index);
  return files;
}

/** A page that is served, and how to end it. */
export interface ServedPage {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/**
 * Serves files on the loopback alone, `port` 0 being any that is free. Answers GET and HEAD, and only who asks for this
 * very host by its name: a site elsewhere whose name is made to lead here (DNS rebinding) is refused. Fails where the
 * port cannot be had.
 */
export function servePage(files: ReadonlyMap<string, ServedFile>, port: number): Promise<ServedPage> {
  return new Promise((resolve, reject) => {
    const server = createServer((request, response) => {
      answer(files, (server.address() as AddressInfo).port, request, response);
    });
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      resolve({
        address: `http://localhost:${(server.address() as AddressInfo).port}/`,
        close: () =>
          new Promise((done) => {
            server.close(() => done());
            server.closeAllConnections();
          }),
      });
    });
  });
}

function answer(
  files: ReadonlyMap<string, ServedFile>,
  port: number,
  { method, url = '', headers: asked }: IncomingMessage,
  response: ServerResponse,
): void {
  const refuse = (status: number, words: string, more: Readonly<Record<string, string>> = {}): void => {
    response.writeHead(status, { ...headers, ...more, 'content-type': 'text/plain; charset=utf-8' });
    response.end(method === 'HEAD' ? undefined : `${words}\n`);
  };
  const path = url.replace(/\?.*$/s, '');
  const file = files.get(path);
  if (asked.host !== `localhost:${port}` && asked.host !== `127.0.0.1:${port}`)
    refuse(421, 'Nothing is served under this name.');
  else if (method !== 'GET' && method !== 'HEAD')
    refuse(405, 'Files are only read here.', { allow: 'GET, HEAD' });
  else if (!file) refuse(404, 'There is no such file.');
  else {
    response.writeHead(200, {
      ...headers,
      ...(path === '/worker.js' && { 'content-security-policy': workerPolicy }),
      'content-type': file.type,
      'content-length': file.content.length,
    });
    response.end(method === 'HEAD' ? undefined : file.content);
  }
}
