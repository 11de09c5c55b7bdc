import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdir, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { connect, type Socket } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/*
 * Firefox driven by its own remote protocol, Marionette (firefox-source-docs.mozilla.org/testing/marionette): JSON behind its
 * length in bytes, over TCP. It knows the commands of WebDriver (W3C), without a driver between.
 */

/** A Firefox without a window, with a profile and a folder of downloads that go when it is closed. */
export interface Firefox {
  readonly go: (address: string) => Promise<void>;
  /** Waits until something is there, and gives what a script returns of it; the script has `arguments`. */
  readonly run: <T>(script: string, ...words: readonly unknown[]) => Promise<T>;
  /** Waits until a script returns something, for a minute. */
  readonly until: <T>(script: string, ...words: readonly unknown[]) => Promise<T>;
  /** Presses what an XPath finds first. */
  readonly press: (xpath: string) => Promise<void>;
  /** Types into what an XPath finds first. */
  readonly type: (xpath: string, text: string) => Promise<void>;
  /** The bytes of a file that was saved. */
  readonly downloaded: (name: string) => Promise<Buffer>;
  readonly close: () => Promise<void>;
}

/** Files are saved without a question; the port is whichever is free; nothing is asked of anybody. */
const preferences = (downloads: string): Readonly<Record<string, unknown>> => ({
  'marionette.port': 0,
  'browser.download.folderList': 2,
  'browser.download.dir': downloads,
  'browser.download.always_ask_before_handling_new_types': false,
  'browser.helperApps.neverAsk.saveToDisk': 'application/pdf',
  'pdfjs.disabled': true,
  'browser.shell.checkDefaultBrowser': false,
  'datareporting.policy.dataSubmissionEnabled': false,
  'app.update.enabled': false,
});

export async function firefox(program: string): Promise<Firefox> {
  const home = await mkdtemp(join(tmpdir(), 'bodkin-firefox-'));
  const [profile, downloads] = [join(home, 'profile'), join(home, 'downloads')];
  await Promise.all([mkdir(profile), mkdir(downloads)]);
  const lines = Object.entries(preferences(downloads)).map(
    ([name, value]) => `user_pref(${JSON.stringify(name)}, ${JSON.stringify(value)});`,
  );
  await writeFile(join(profile, 'user.js'), lines.join('\n'));
  const running = spawn(program, ['--headless', '--marionette', '--no-remote', '--profile', profile], {
    env: { ...process.env, HOME: home },
    stdio: 'ignore',
  });
  const port = await found(async () => Number(await readFile(join(profile, 'MarionetteActivePort'), 'utf8')));
  const socket = connect(port, '127.0.0.1');
  const ask = asking(socket);
  await once(socket, 'connect');
  await ask('WebDriver:NewSession', { acceptInsecureCerts: false });
  await ask('WebDriver:SetWindowRect', { width: 1280, height: 900 });
  const run = async <T>(script: string, ...words: readonly unknown[]): Promise<T> =>
    ((await ask('WebDriver:ExecuteScript', { script, args: words })) as { readonly value: T }).value;
  const element = (xpath: string): Promise<string> =>
    found(async () => {
      const { value } = (await ask('WebDriver:FindElement', { using: 'xpath', value: xpath })) as {
        readonly value: Readonly<Record<string, string>>;
      };
      return Object.values(value)[0] ?? '';
    });
  return {
    go: async (address) => void (await ask('WebDriver:Navigate', { url: address })),
    run,
    until: (script, ...words) => found(() => run(script, ...words)),
    press: async (xpath) => void (await ask('WebDriver:ElementClick', { id: await element(xpath) })),
    type: async (xpath, text) =>
      void (await ask('WebDriver:ElementSendKeys', { id: await element(xpath), text })),
    // A file that is still being written is empty, or has another beside it.
    downloaded: (name) =>
      found(async () => {
        const part = await readFile(join(downloads, `${name}.part`)).catch(() => undefined);
        const bytes = await readFile(join(downloads, name));
        return part === undefined && bytes.length > 0 ? bytes : undefined;
      }),
    close: async () => {
      const ended = once(running, 'exit');
      await ask('Marionette:Quit', { flags: ['eForceQuit'] }).catch(() => running.kill());
      await ended;
      socket.destroy();
      await rm(home, { recursive: true, force: true });
    },
  };
}

type Ask = (command: string, words: unknown) => Promise<unknown>;

/** Asks, and hears the answers: `[1, number, error, result]` to `[0, number, command, words]`. */
function asking(socket: Socket): Ask {
  const waiting = new Map<number, (error: unknown, result: unknown) => void>();
  let [number, heard] = [0, Buffer.alloc(0)];
  socket.on('data', (bytes) => {
    heard = Buffer.concat([heard, bytes]);
    for (;;) {
      const colon = heard.indexOf(':');
      const end = colon + 1 + Number(heard.subarray(0, Math.max(0, colon)).toString());
      if (colon < 0 || heard.length < end) return;
      const said: unknown = JSON.parse(heard.subarray(colon + 1, end).toString());
      heard = heard.subarray(end);
      // The first that is heard is a greeting.
      if (Array.isArray(said)) waiting.get(said[1])?.(said[2], said[3]);
    }
  });
  return (command, words) =>
    new Promise((resolve, reject) => {
      number += 1;
      const text = JSON.stringify([0, number, command, words]);
      waiting.set(number, (error, result) =>
        error ? reject(new Error(`${command}: ${JSON.stringify(error).slice(0, 300)}`)) : resolve(result),
      );
      socket.write(`${Buffer.byteLength(text)}:${text}`);
    });
}

/** Tries until there is something, for a minute. */
async function found<T>(seek: () => Promise<T | undefined>): Promise<T> {
  const end = Date.now() + 60_000;
  for (;;) {
    let fault: unknown;
    const come = await seek().catch((error: unknown) => {
      fault = error;
      return undefined;
    });
    if (come !== undefined && come !== null && come !== false && come !== '') return come;
    if (Date.now() > end) throw fault ?? new Error('nothing came');
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
}
