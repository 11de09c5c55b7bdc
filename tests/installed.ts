import { execFileSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';

/**
 * Where the machine has a program, of the places where it may lie. Where there is none, it is installed from Debian's packages
 * by whoever may; otherwise there is none, and what needs it is left out with a word.
 */
export function installed(places: readonly string[], debianPackage: string): string | undefined {
  const here = places.find(isThere);
  if (here !== undefined || process.getuid?.() !== 0) return here;
  try {
    execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', debianPackage], {
      stdio: 'ignore',
      timeout: 180_000,
    });
  } catch {
    return undefined;
  }
  return places.find(isThere);
}

function isThere(place: string): boolean {
  try {
    accessSync(place, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
