/** The longest id; with what is put behind it a name stays below the 255 bytes that file systems take. */
export const longestId = 100;

/** Names that some systems keep for devices, whatever follows a dot (from memory). */
const devices = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;

/** Whether an id is the name of a file on any system: plain letters, figures, `.`, `_` and `-`, no dot at either end. */
export const isSafeId = (id: string): boolean =>
  id.length <= longestId && /^[A-Za-z0-9_-]([A-Za-z0-9._-]*[A-Za-z0-9_-])?$/.test(id) && !devices.test(id);

/** What two ids have in common where a file system takes them for one. */
export const foldedId = (id: string): string => id.toLowerCase();
