import {
  linkSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  realpathSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { basename, join } from 'node:path';

/*
 * How a set of files in a folder becomes another at once, whatever else lies there. The new files are written into a folder
 * of the set's own; the old ones are linked into it too. Each name in the folder is made to lead to where `now` leads, which
 * is the old set, and nothing has changed for a reader; `now` is made to lead to the new set, in one step of the file system,
 * and all names have changed; then the new files take their names themselves. Where it is killed before that step the old
 * set is there to read, after it the new one, and what is left to tidy is tidied by the next run. Where no links can be made
 * the old files are put away first, so that one which may not be moved is found before a new one has taken its name.
 */

/** Where a set is made, beside the names that it is to take. */
export interface FileSet {
  readonly folder: string;
  /** A folder in it. */
  readonly work: string;
}

const [oldFiles, newFiles, now] = ['old', 'new', 'now'];

/** The place of a new file of the set. */
export const placeOfNew = ({ work }: FileSet, name: string): string => join(work, newFiles, name);

export function beginSet(folder: string, name: string): FileSet {
  const set = { folder, work: join(folder, name) };
  mkdirSync(set.work);
  mkdirSync(join(set.work, newFiles));
  return set;
}

/** Gives all new files of a set their names. `hold` is asked before each step, and throws where the set is no longer this run's to change. */
export function swapIn(set: FileSet, hold: () => void): void {
  const names = readdirSync(join(set.work, newFiles));
  if (names.length > 1) {
    const linked = leadByLinks(set, names, hold);
    if (!linked)
      for (const name of names) {
        hold();
        putAway(set, name);
      }
    hold();
    turn(set, linked);
  }
  takeNames(set, names, hold);
  hold();
  rmSync(set.work, { recursive: true, force: true });
}

/**
 * Ends what was begun of a set: where it had been turned to the new files they take the rest of their names, else the old ones
 * are as they were. May be done, or begun, any number of times.
 */
export function settle(set: FileSet): void {
  if (isTurned(set)) takeNames(set, namesIn(join(set.work, newFiles)));
  else
    for (const name of new Set([...namesIn(set.folder), ...namesIn(join(set.work, oldFiles))]))
      takeBack(set, name);
  rmSync(set.work, { recursive: true, force: true });
}

/** Where each name leads while it is a link. */
const leadsTo = ({ work }: FileSet, name: string): string => join(basename(work), now, name);

/** Makes the names lead to the old files by way of `now`; false, and nothing done, where no links can be made. */
function leadByLinks(set: FileSet, names: readonly string[], hold: () => void): boolean {
  const { folder, work } = set;
  mkdirSync(join(work, oldFiles));
  try {
    for (const name of names) keepOld(join(folder, name), join(work, oldFiles, name));
    symlinkSync(oldFiles, join(work, now), 'dir');
    for (const [i, name] of names.entries()) symlinkSync(leadsTo(set, name), join(work, `link-${i}`));
  } catch {
    hold();
    // Each file system without links, and each that keeps them from somebody, has a code of its own for it.
    rmSync(join(work, oldFiles), { recursive: true });
    rmSync(join(work, now), { force: true });
    mkdirSync(join(work, oldFiles));
    return false;
  }
  for (const [i, name] of names.entries()) {
    hold();
    renameSync(join(work, `link-${i}`), join(folder, name));
  }
  return true;
}

/** A link that lay there leads where it led; nothing where there was nothing. */
function keepOld(file: string, kept: string): void {
  const there = lstatSync(file, { throwIfNoEntry: false });
  if (there?.isSymbolicLink()) symlinkSync(targetOf(file), kept);
  else if (there) linkSync(file, kept);
}

function putAway({ folder, work }: FileSet, name: string): void {
  const file = join(folder, name);
  if (lstatSync(file, { throwIfNoEntry: false })) renameSync(file, join(work, oldFiles, name));
}

function targetOf(link: string): string {
  try {
    return realpathSync(link);
  } catch {
    return readlinkSync(link);
  }
}

/** The one step: from here on it is the new set. Without links it is only noted, for whoever has to end what was begun. */
function turn({ work }: FileSet, linked: boolean): void {
  const turned = join(work, 'turned');
  if (linked) symlinkSync(newFiles, turned, 'dir');
  else writeFileSync(turned, newFiles);
  renameSync(turned, join(work, now));
}

function isTurned({ work }: FileSet): boolean {
  const at = join(work, now);
  const there = lstatSync(at, { throwIfNoEntry: false });
  if (!there) return false;
  return (there.isSymbolicLink() ? readlinkSync(at) : readFileSync(at, 'utf8')) === newFiles;
}

function takeNames(set: FileSet, names: readonly string[], hold: () => void = () => {}): void {
  for (const name of names) {
    hold();
    renameSync(placeOfNew(set, name), join(set.folder, name));
  }
}

/** What leads to the old file, or has left its name free for a new one, is the old file again. */
function takeBack(set: FileSet, name: string): void {
  const at = join(set.folder, name);
  const there = lstatSync(at, { throwIfNoEntry: false });
  const isOurs = there?.isSymbolicLink() && readlinkSync(at) === leadsTo(set, name);
  if (there && !isOurs) return;
  const kept = join(set.work, oldFiles, name);
  if (lstatSync(kept, { throwIfNoEntry: false })) renameSync(kept, at);
  else rmSync(at, { force: true });
}

const namesIn = (folder: string): readonly string[] =>
  lstatSync(folder, { throwIfNoEntry: false })?.isDirectory() ? readdirSync(folder) : [];
