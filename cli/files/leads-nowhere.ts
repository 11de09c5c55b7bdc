import { fstatSync, readFileSync, statSync } from 'node:fs';

/** The bits of an open file's flags that say how it is used, and their value where it is read and written (open(2)). */
const ACCESS = 0o3;
const READ_AND_WRITTEN = 0o2;

/**
 * Whether what is written to an open file is lost though no shell was asked for that. Node opens /dev/null, to be read and written, for
 * what was closed before the run (`>&-`), and so do programs that want nothing of what they start; a shell's `>/dev/null` is only
 * written. Known on Linux alone; false where it is not.
 */
export function leadsNowhere(fd: number): boolean {
  try {
    const { rdev } = fstatSync(fd);
    if (rdev === 0 || rdev !== statSync('/dev/null').rdev) return false;
    const [, flags] = /^flags:\s*([0-7]+)$/m.exec(readFileSync(`/proc/self/fdinfo/${fd}`, 'utf8')) ?? [];
    return flags !== undefined && (Number.parseInt(flags, 8) & ACCESS) === READ_AND_WRITTEN;
  } catch {
    return false;
  }
}
