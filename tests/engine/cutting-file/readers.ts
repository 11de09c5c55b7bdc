import { execFileSync } from 'node:child_process';

const python = '/usr/bin/python3';

const ran = (command: string, words: readonly string[]): string | undefined => {
  try {
    return execFileSync(command, words, {
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
      maxBuffer: 1e8,
    });
  } catch {
    return undefined;
  }
};

/**
 * Installs a Debian package where its program does not answer, if this process may; whether it answers then. What needs it is
 * left out with a word otherwise.
 */
function present(name: string, asked: () => string | undefined): boolean {
  if (asked() !== undefined) return true;
  if (process.getuid?.() === 0)
    ran('timeout', ['180', 'apt-get', 'install', '-y', '-qq', '--no-install-recommends', name]);
  if (asked() !== undefined) return true;
  process.stderr.write(`No ${name} here, and none can be installed: what it reads is left out.\n`);
  return false;
}

/** Whether ezdxf (Debian's python3-ezdxf), a library that reads and audits DXF, is there. */
export const hasEzdxf = present('python3-ezdxf', () => ran(python, ['-c', 'import ezdxf']));

/** Whether the reader of geographic vector formats ogrinfo (Debian's gdal-bin), which knows DXF too, is there. */
export const hasOgrinfo = present('gdal-bin', () => ran('ogrinfo', ['--version']));

/** One block as ezdxf has it. Areas in mm^2 by a flattening of its own to 0.001 mm, lengths in mm likewise. */
export interface AuditedBlock {
  readonly attributes: Readonly<Record<string, string>>;
  /** How many entities are on each layer. */
  readonly layers: Readonly<Record<string, number>>;
  readonly area: number;
  /** Lengths of the stitching line by the name beside it. */
  readonly lengths: Readonly<Record<string, number>>;
  readonly words: readonly string[];
}

export interface Audited {
  readonly version: string;
  readonly units: number;
  /** What the audit cannot put right, and what it does. */
  readonly errors: readonly string[];
  readonly fixes: readonly string[];
  readonly layers: readonly string[];
  readonly blocks: Readonly<Record<string, AuditedBlock>>;
}

/** Reads files with ezdxf, audits them and measures their blocks. */
export function audited(files: readonly string[]): readonly Audited[] {
  const said = ran(python, [new URL('audit.py', import.meta.url).pathname, ...files]);
  if (said === undefined) throw new Error('ezdxf cannot read what was written');
  return JSON.parse(said);
}

/** What ogrinfo says of a file: how many things there are to draw, blocks inserted, and how far they reach. */
export function surveyed(file: string): { readonly count: number; readonly extent: readonly number[] } {
  const said = ran('ogrinfo', ['-ro', '-al', '-so', file]) ?? '';
  const numbers =
    /Extent: \(([^,]+), ([^)]+)\) - \(([^,]+), ([^)]+)\)/.exec(said)?.slice(1).map(Number) ?? [];
  return { count: Number(/Feature Count: (\d+)/.exec(said)?.[1]), extent: numbers };
}
