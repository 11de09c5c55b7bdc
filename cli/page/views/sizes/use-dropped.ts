import { messageOf } from '../../../../drafts/index.ts';
import { useDroppedFiles } from '../use-dropped-files.ts';
import { filesTaken, textsOf } from './chart-files.ts';
import type { SizesAction } from './own.ts';

/** Files that are dropped while sizes are shown are a chart and the bodies that it names, not her measurements. */
export function useDropped(
  needs: readonly string[],
  act: (what: SizesAction) => void,
  note: (notice: string) => void,
): void {
  useDroppedFiles((files) => {
    textsOf(files)
      .then((texts) => {
        const what = filesTaken(texts, needs);
        if (what) act(what);
      })
      .catch((error: unknown) => note(messageOf(error)));
    return true;
  });
}
