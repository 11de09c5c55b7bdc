import type { ComponentType } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type PageView, viewEntry } from '../view-names.ts';
import { viewTable } from './table.ts';
import type { FileViewProps } from './view.ts';

type View = ComponentType<FileViewProps>;

/** Views whose code is here already. */
const loaded = new Map<PageView, View>();

/** The view that is shown, once its code is loaded. It begins at its heading, for whoever sees it and whoever hears it. */
export function LoadedView(props: FileViewProps) {
  const { view } = props.state;
  const [, come] = useState<PageView>();
  const [failed, fail] = useState<PageView>();
  const Shown = loaded.get(view);
  const begun = useRef(view);
  useEffect(() => {
    if (loaded.has(view)) return;
    viewTable[view]().then(
      (code) => {
        loaded.set(view, code);
        come(view);
      },
      () => fail(view),
    );
  }, [view]);
  useLayoutEffect(() => {
    if (!Shown || begun.current === view) return;
    begun.current = view;
    scrollTo(0, 0);
    document.querySelector<HTMLElement>('h1')?.focus({ preventScroll: true });
  }, [Shown, view]);
  if (Shown) return <Shown {...props} />;
  return (
    <>
      <h1>{viewEntry(view).title}</h1>
      <p class="quiet">
        {failed === view ? 'This view could not be loaded. Load the page again.' : 'Loading …'}
      </p>
    </>
  );
}
