import { execFileSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';

const places = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

const present = (): string | undefined =>
  places.find((place) => {
    try {
      accessSync(place, constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });

/**
 * Where the machine's Chromium is. Where there is none, it is installed from Debian's packages by whoever may; otherwise
 * there is none, and what needs it is left out with a word.
 */
export function chromium(): string | undefined {
  const here = present();
  if (here !== undefined || process.getuid?.() !== 0) return here;
  try {
    execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], {
      stdio: 'ignore',
      timeout: 180_000,
    });
  } catch {
    return undefined;
  }
  return present();
}
