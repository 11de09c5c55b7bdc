import { useEffect, useRef, useState } from 'preact/hooks';
import type { DraftFiles } from '../../../../own-draft/draft-files.ts';
import { Types, type Typing } from './types.ts';

/** Types of the files, from when somebody asks for them until the view is left; nothing before. */
export function useTypes(
  wanted: boolean,
  files: DraftFiles,
  file: string,
): { readonly types: Types | undefined; readonly typing: Typing | undefined } {
  const types = useRef<Types>(undefined);
  const [typing, hear] = useState<Typing>();
  const isThere = wanted && file !== '';
  useEffect(() => {
    if (!isThere) return;
    types.current = new Types(hear);
    return () => {
      types.current?.end();
      types.current = undefined;
      hear(undefined);
    };
  }, [isThere]);
  useEffect(() => types.current?.update(files, file), [isThere, files, file]);
  return { types: types.current, typing };
}
