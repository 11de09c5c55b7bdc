import type { TakenBytes, TakenFile } from './taken-file.ts';

/** Hands a file to the browser, which puts it where it puts downloads. */
export function saveFile(file: TakenFile | TakenBytes): void {
  const content = 'text' in file ? file.text : file.bytes;
  const url = URL.createObjectURL(new Blob([content], { type: 'application/octet-stream' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = file.name;
  link.click();
  // The browser has begun to read it by then.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
}
