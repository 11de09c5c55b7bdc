import { useLayoutEffect } from 'preact/hooks';
import { messageOf } from '../../../../drafts/index.ts';
import { filesTaken, textsOf } from './chart-files.ts';
import type { SizesAction } from './own.ts';

/** Files that are dropped while sizes are shown are a chart and the bodies that it names, not her measurements. */
export function useDropped(
  needs: readonly string[],
  act: (what: SizesAction) => void,
  note: (notice: string) => void,
): void {
  useLayoutEffect(() => {
    const dropped = async (event: DragEvent): Promise<void> => {
      const files = [...(event.dataTransfer?.files ?? [])];
      if (files.length === 0) return;
      event.preventDefault();
      event.stopPropagation();
      try {
        const what = filesTaken(await textsOf(files), needs);
        if (what) act(what);
      } catch (error) {
        note(messageOf(error));
      }
    };
    // Before the page, which takes a file that is dropped for measurements.
    addEventListener('drop', dropped, { capture: true });
    return () => removeEventListener('drop', dropped, { capture: true });
  });
}
