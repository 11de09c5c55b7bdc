import type { TakenFile } from './taken-file.ts';

/** Hands a file to the browser, which puts it where it puts downloads. */
export function saveFile({ name, text }: TakenFile): void {
  const url = URL.createObjectURL(new Blob([text], { type: 'application/octet-stream' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser has begun to read it by then.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
