import { messageOf } from '../../engine/text/message-of.ts';

/** What the system says went wrong, in one line. */
export const reason = (error: unknown): string => {
  const text = messageOf(error);
  const plain: Readonly<Record<string, string>> = {
    ENOENT: 'there is no such file or folder.',
    EACCES: 'you may not.',
    EPERM: 'you may not; perhaps a file there is somebody else’s, or open in another program.',
    EBUSY: 'a file there is open in another program.',
    EISDIR: 'it is a folder.',
    ENOTDIR: 'it, or part of the way to it is a file, not a folder.',
    ENAMETOOLONG: 'a name is too long.',
    ELOOP: 'a link there leads to itself.',
    EEXIST: 'there is something of that name already.',
    ENOSPC: 'the disk is full.',
    EROFS: 'the disk can only be read.',
  };
  const code = typeof error === 'object' && error !== null && 'code' in error ? String(error.code) : '';
  return plain[code] ?? text.split('\n')[0] ?? '';
};
