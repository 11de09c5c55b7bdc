import { useLayoutEffect } from 'preact/hooks';

/** Lets a view take files that are dropped while it is shown; what it does not take, the page takes for measurements. */
export function useDroppedFiles(takes: (files: readonly File[]) => boolean): void {
  useLayoutEffect(() => {
    const dropped = (event: DragEvent): void => {
      const files = [...(event.dataTransfer?.files ?? [])];
      if (files.length === 0 || !takes(files)) return;
      event.preventDefault();
      event.stopPropagation();
    };
    // Before the page, and before an editor, which would write into the code what the file says.
    addEventListener('drop', dropped, { capture: true });
    return () => removeEventListener('drop', dropped, { capture: true });
  });
}
