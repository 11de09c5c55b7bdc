import type { Declared } from './declared.ts';
import { readCode } from './read-code.ts';

/** What can be imported from the program, by name, as the editor is told of it. Plain data. */
export type ProgramNames = Readonly<Record<string, ProgramName>>;

export interface ProgramName {
  readonly signature: string;
  readonly says: string;
  readonly isType?: true;
  /** Of a class or an interface: what it has, by name. */
  readonly members?: Readonly<Record<string, Pick<Declared, 'signature' | 'says'>>>;
}

/**
 * The names that a file exports, with those that it passes on from others. `read` gives the text of a file by its path;
 * `from` resolves what an import names.
 */
export function programNames(
  file: string,
  read: (file: string) => string,
  from: (file: string, source: string) => string,
): ProgramNames {
  const names: Record<string, ProgramName> = {};
  const { declared, passed } = readCode(read(file));
  for (const [name, each] of declared) if (each.isExported) names[name] = named(each);
  for (const { name, local, source } of passed) {
    const others = programNames(from(file, source), read, from);
    if (name !== '*') {
      const found = others[name];
      if (found) names[local] = found;
    } else if (local === '*') Object.assign(names, others);
    else names[local] = { signature: `${local}: all that ${source} exports`, says: '' };
  }
  return names;
}

const named = ({ signature, says, isType, members }: Declared): ProgramName => ({
  signature,
  says,
  ...(isType ? { isType } : {}),
  ...(members && members.size > 0 ? { members: Object.fromEntries(members) } : {}),
});
